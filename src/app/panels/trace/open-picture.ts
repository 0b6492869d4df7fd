import type { PictureFile } from '../../../interchange/json/schema.ts';
import { lightOfPixels } from '../../../trace/gray-picture.ts';
import { BYTES_LOOKED_AT, type PictureKind, pictureKind } from '../../../trace/picture-kind.ts';
import type { PictureSize } from '../../../trace/picture-scale.ts';
import { showKeptPicture, showPicture } from '../../state/draw/underlay-editing.ts';
import { type UnderlayImage, underlaysOf } from '../../state/draw/underlay-state.ts';
import type { Session } from '../../state/session.ts';

/** Larger files than this are not even read, in bytes. */
const LARGEST_FILE = 80 * 1024 * 1024;

/** A picture with more pixels than this is not decoded: it would fill the memory. */
const MOST_PIXELS = 160e6;

/** A picture with more pixels than this is worked on at a smaller scale. */
const MOST_WORKED_ON = 12e6;

/** Longest side that is worked on, in pixels. */
const LONGEST_SIDE = 8_192;

/** A picture of more bytes than this is written anew, as JPEG, where it is to be kept. */
const LARGEST_KEPT = 5.8e6;

/** A reason why a picture is not opened, for people. */
class PictureRefused extends Error {
  readonly cure: string;

  constructor(what: string, cure: string) {
    super(what);
    this.cure = cure;
  }
}

/** Opens a picture that the user chose, dropped or pasted, and lays it under the profile; what is wrong with it is told. */
export async function openPicture(session: Session, id: string, file: File): Promise<void> {
  const name = file.name || 'The picture';
  await reading(session, id, name, async () => {
    const image = await imageOf(file, name);
    return () => showPicture(session, id, image);
  });
}

/** Opens the picture that the file keeps for a profile. */
export async function openKeptPicture(session: Session, id: string, kept: PictureFile): Promise<void> {
  await reading(session, id, 'The kept picture', async () => {
    const image = await imageOf(blobOf(kept.image), 'kept picture');
    return () => showKeptPicture(session, id, { ...image, data: kept.image }, kept);
  });
}

async function reading(session: Session, id: string, name: string, open: () => Promise<() => void>): Promise<void> {
  const store = underlaysOf(session);
  const { opened } = session.documents.getState();
  store.setState({ reading: id, trouble: null });
  try {
    const show = await open();
    // Meanwhile another family may have been opened; its profiles have no such picture.
    if (session.documents.getState().opened === opened) show();
  } catch (reason) {
    const refused = reason instanceof PictureRefused ? reason : UNREADABLE;
    store.setState({ trouble: { id, what: `${name} ${refused.message}`, cure: refused.cure } });
  }
  store.setState({ reading: null });
}

const UNREADABLE = new PictureRefused('cannot be read: it is broken or cut off', 'Save it anew, as PNG or JPEG.');

async function imageOf(blob: Blob, name: string): Promise<UnderlayImage> {
  if (blob.size > LARGEST_FILE) {
    const megabytes = Math.round(blob.size / 1024 / 1024);
    throw new PictureRefused(`has ${megabytes} MB, more than can be read`, 'Crop it, or save it smaller.');
  }
  const kind = pictureKind(new Uint8Array(await blob.slice(0, BYTES_LOOKED_AT).arrayBuffer()));
  refuseUnlessGood(kind);
  const whole = await createImageBitmap(blob);
  if (whole.width < 16 || whole.height < 16) throw new PictureRefused('has hardly any pixels', 'Choose a larger one.');
  // Read before the picture is put away for a smaller one, which leaves it without a size.
  const { width, height } = whole;
  const size = workedOn(whole);
  const scaled = size.width !== width;
  const bitmap = scaled ? await smaller(whole, size) : whole;
  const canvas = drawn(bitmap);
  const pixels = canvas.context.getImageData(0, 0, size.width, size.height);
  const asIs = kind.use === 'kept' && !scaled && blob.size <= LARGEST_KEPT;
  const keep = asIs ? blob : await canvas.encode();
  return {
    ...{ name, size, bitmap, light: lightOfPixels(pixels.data, size.width, size.height) },
    data: keep.size <= LARGEST_KEPT ? await addressOf(keep) : null,
    note: scaled
      ? `It has ${width} × ${height} pixels and is worked on at ${size.width} × ${size.height}. Crop it to the section for more.`
      : '',
  };
}

function refuseUnlessGood({ use, size, what, cure }: PictureKind): void {
  if (use === 'refused') throw new PictureRefused(what, cure);
  if (size && size.width * size.height > MOST_PIXELS)
    throw new PictureRefused(
      `has ${size.width} × ${size.height} pixels, more than can be read`,
      'Crop it to the section.',
    );
}

function workedOn({ width, height }: PictureSize): PictureSize {
  const k = Math.min(1, LONGEST_SIDE / Math.max(width, height), Math.sqrt(MOST_WORKED_ON / (width * height)));
  return { width: Math.max(1, Math.floor(width * k)), height: Math.max(1, Math.floor(height * k)) };
}

async function smaller(whole: ImageBitmap, size: PictureSize): Promise<ImageBitmap> {
  const bitmap = await createImageBitmap(whole, {
    resizeWidth: size.width,
    resizeHeight: size.height,
    resizeQuality: 'high',
  });
  whole.close();
  return bitmap;
}

/** A picture on a canvas of its own, to read its pixels and to write it anew. */
function drawn(bitmap: ImageBitmap) {
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new PictureRefused('cannot be drawn by this browser', 'Close other windows and try again.');
  context.drawImage(bitmap, 0, 0);
  return { context, encode: () => canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 }) };
}

/** A file as a data address. */
function addressOf(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(UNREADABLE);
    reader.readAsDataURL(blob);
  });
}

/** The bytes of a data address; the page's policy lets none be fetched. */
function blobOf(address: string): Blob {
  const comma = address.indexOf(',');
  const type = /^data:([a-z/]+)/.exec(address)?.[1] ?? '';
  try {
    const text = atob(address.slice(comma + 1));
    return new Blob([Uint8Array.from(text, (sign) => sign.charCodeAt(0))], { type });
  } catch {
    throw UNREADABLE;
  }
}
