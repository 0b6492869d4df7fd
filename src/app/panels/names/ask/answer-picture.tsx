import { useMemo } from 'react';
import { type Family, openingsOf } from '../../../../family/family.ts';
import { plugFace } from '../../../../family/plug-face.ts';
import type { Answer } from '../../../../names/answer.ts';
import type { Knowledge } from '../../../../names/knowledge.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { askQuestion } from '../../../state/names/asking.ts';
import { whatIs } from '../../../state/names/question-forms.ts';
import { trayReach } from '../../../state/tray-reach.ts';
import { SectionThumb } from '../../section-thumb.tsx';
import { useSize } from '../../use-size.ts';
import { useSession } from '../../use-store.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import { ClashHatch, PlugPicture } from '../../wall/plug-picture.tsx';
import styles from './answer-picture.module.css';

interface AnswerPictureProps {
  readonly family: Family;
  readonly answer: Answer;
  readonly knowledge: Knowledge;
}

/** The pair that was asked about, the blank in its keyway; or every section that the answer names. */
export function AnswerPicture({ family, answer, knowledge }: AnswerPictureProps) {
  const { pair, profiles } = answer;
  const named = useMemo(
    () => profiles.flatMap((id) => family.profiles.find((profile) => profile.id === id) ?? []),
    [family, profiles],
  );
  const entrant = pair && family.profiles.find(({ id }) => id === pair.entrantId);
  const opening = pair && family.profiles.find(({ id }) => id === pair.openingId);
  if (entrant && opening)
    return <PairPicture family={family} entrant={entrant} opening={opening} knowledge={knowledge} />;
  return named.length > 0 ? <NamedSections family={family} named={named} knowledge={knowledge} /> : null;
}

interface PairPictureProps extends Pick<AnswerPictureProps, 'family' | 'knowledge'> {
  readonly entrant: Profile;
  readonly opening: Profile;
}

/** Room round the plug, pixels. */
const ROUND = 8;

function PairPicture({ family, entrant, opening, knowledge }: PairPictureProps) {
  const [frame, size] = useSize<HTMLDivElement>();
  const face = useMemo(() => plugFace(openingsOf(family)), [family]);
  const fit = knowledge.fitOf(entrant.id, opening.id);
  const pxPerMm = size ? Math.min((size.width - ROUND) / 2 / face.half, (size.height - ROUND) / 2 / face.radius) : 0;
  return (
    <figure className={styles.pair}>
      <div ref={frame} className={styles.plug}>
        {size && pxPerMm > 0 && (
          <>
            <ClashHatch pxPerMm={pxPerMm} />
            <PlugPicture
              opening={opening}
              entrant={entrant}
              fit={fit}
              tone={fit?.verdict ?? 'unknown'}
              face={face}
              pxPerMm={pxPerMm}
              width={size.width}
              height={size.height}
              glides
            />
          </>
        )}
      </div>
      <figcaption>
        {entrant.name} in {opening.name}
        {fit?.verdict === 'blocked' && <span>Hatched: where they would share the same place.</span>}
      </figcaption>
    </figure>
  );
}

/** More pictures than this are not looked at one by one. */
const MOST_SHOWN = 24;

interface NamedSectionsProps extends Pick<AnswerPictureProps, 'family' | 'knowledge'> {
  readonly named: readonly Profile[];
}

/** Each section that the answer names, to one scale; a press asks what it is. */
function NamedSections({ family, named, knowledge }: NamedSectionsProps) {
  const session = useSession();
  const reach = useMemo(() => trayReach(family), [family]);
  const few = named.length <= 3;
  const size = sizeOf(reach, few ? 190 : 110);
  return (
    <ul className={styles.named} aria-label="Sections in the answer">
      {named.slice(0, MOST_SHOWN).map((profile) => (
        <li key={profile.id}>
          <button
            type="button"
            className={styles.section}
            title={`Ask what ${profile.name} is`}
            onClick={() => askQuestion(session, whatIs(profile.name))}
          >
            <SectionThumb profile={profile} reachX={reach.x} reachY={reach.y} {...size} />
            <span className={styles.name}>
              <VerdictBeside profile={profile} first={named[0]} knowledge={knowledge} />
              {profile.name}
            </span>
          </button>
        </li>
      ))}
      {named.length > MOST_SHOWN && <li className={styles.more}>and {named.length - MOST_SHOWN} more</li>}
    </ul>
  );
}

/** A picture as high as asked for, as wide as the widest section of the family needs. */
function sizeOf(reach: { x: number; y: number }, height: number) {
  const scale = (height - 4) / 2 / reach.y;
  return { width: Math.max(34, Math.ceil(2 * reach.x * scale) + 10), height };
}

/** The mark of what one of them does in the other, where the first asked about and this one make a pair. */
function VerdictBeside({ profile, first, knowledge }: { profile: Profile; first: Profile; knowledge: Knowledge }) {
  if ((profile.kind === 'opening') === (first.kind === 'opening')) return null;
  const [entrant, opening] = profile.kind === 'opening' ? [first, profile] : [profile, first];
  const fit = knowledge.fitOf(entrant.id, opening.id);
  if (!fit) return null;
  return (
    <>
      <VerdictMark verdict={fit.verdict} size={18} />
      <span className="unseen">{fit.verdict}: </span>
    </>
  );
}
