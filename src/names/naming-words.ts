/** Names of trees and herbs: plain words that nobody takes for two, or for each other. */
const WORDS = `Alder Birch Cedar Elder Hazel Juniper Larch Maple Poplar Rowan Spruce Willow Beech Aspen Hornbeam Sorrel
  Fennel Tansy Yarrow Thyme Clover Nettle Teasel Burdock Bracken Heather Gorse Sedge Moss Fern Chicory Mallow Bramble
  Comfrey Vetch Campion Harebell Foxglove Primrose Cowslip Saffron Borage Hyssop Rosemary Lavender Marjoram Dill Parsley
  Betony Celandine Meadowsweet Speedwell Woodruff Quince Medlar Damson Walnut Chestnut Sycamore Linden`.split(/\s+/);

/** Words put before, where a family has more sections than there are names. */
const BEFORE = ['Red', 'White', 'Grey', 'Green', 'Dark', 'Pale', 'Wild', 'Tall'];

/**
 * Names for sections without end, in a fixed order: words, words with one before them, then with a number.
 *
 * @param own words of one's own, taken first.
 */
export function* namingWords(own: readonly string[] = []): Generator<string, never, void> {
  yield* own;
  yield* WORDS;
  for (const before of BEFORE) for (const word of WORDS) yield `${before} ${word}`;
  for (let n = 2; ; n += 1) for (const word of WORDS) yield `${word} ${n}`;
}
