const SIGNS: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * A text as it stands in XML, in an element or an attribute, without what no XML may hold.
 *
 * @check tests/laws/svg-round-trip.test.ts
 */
export function escapeXml(text: string): string {
  return cleanText(text).replace(/[&<>"']/g, (sign) => SIGNS[sign]);
}

/** Without the characters that no XML text may hold, nor halves of surrogate pairs. */
export function cleanText(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
  return text.replace(/\p{Cs}/gu, '\ufffd').replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
}
