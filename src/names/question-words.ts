import { KIND_WORDS } from './name-phrase.ts';

/** What a word does in a question. */
export type WordClass =
  /** Words of going in: the subject goes into the object. */
  | 'enters'
  /** Words of letting in: the subject is what the object goes into. */
  | 'takes'
  /** Words of keeping out: like `takes`, said the other way. */
  | 'stops'
  /** Words of handling: the object is what goes in. */
  | 'handles'
  | 'auxiliary'
  | 'negation'
  | 'asking'
  | 'why'
  | 'differs'
  | 'same'
  | 'all'
  | 'any'
  | 'means'
  | 'room'
  | 'into'
  | 'by'
  | 'and'
  | 'between'
  | 'kind'
  /** Words that turn the question into another one. */
  | 'turning'
  | 'filling';

const CLASSES: Readonly<Record<Exclude<WordClass, 'kind'>, string>> = {
  enters: `go goes going gone went enter enters entering entered fit fits fitting fitted work works working worked open
    opens opened operate operates operated pass passes passing suit suits suited suitable slide slides sliding slip
    slips get gets come comes match matches matched belong belongs unlock unlocks unlocked turn turns turned compatible
    serve serves served reach reaches access accesses usable goto`,
  takes: `take takes taken taking accept accepts accepted accepting admit admits admitted receive receives received let
    lets allow allows allowed swallow swallows`,
  stops: `block blocks blocked blocking stop stops stopped stopping exclude excludes excluded keep keeps kept refuse refuses refused
    reject rejects rejected bar bars barred prevent prevents`,
  handles: `put puts use uses used using insert inserts inserted push pushed try tried stick placed need needs
    needed want wants buy order carry carries`,
  auxiliary: `do does did is are was were be been being am can could may might will would shall should must has have had
    'll ll able`,
  negation: `not no never neither nor cannot don't doesn't didn't isn't aren't wasn't can't couldn't won't wouldn't
    shouldn't mustn't hasn't haven't dont doesnt didnt isnt arent cant couldnt wont wouldnt shouldnt`,
  asking: `what which who whom whose where what's whats who's where's which's list wherever how`,
  why: 'why whyever reason cause',
  differs: `differ differs differed difference differences different differently differing compare compares compared
    comparison distinguish distinguishes distinguished vs versus apart unlike`,
  same: `same equal equals identical equivalent interchangeable alike synonym synonyms instead replace
    replaces substitute place`,
  all: 'all every everything everywhere each everyone entire whole',
  any: 'any anything something anywhere somewhere anyone someone nothing none nobody',
  means: 'mean means meant meaning define definition explain describe',
  room: `clearance gap room margin play tight tightly loose loosely snug snugly close closely much thick interference
    deep depth`,
  into: 'in into inside to through for within on onto at → >',
  by: 'by with',
  and: 'and or both plus &',
  between: 'between among',
  turning: `nowhere top bottom safe secure security protected protect protects above below beneath outrank outranks include includes included contain contains upside upsidedown mirror mirrored mirroring mirrorwise backward backwards back inverted invert flip flipped
    reverse reversed rotate rotated sideways inside opposite side end head tip bow first file files filed filing thinned
    thinning grind grinding ground cut cutting away worn wear force forced forcing hammer hammered hammering sanded
    sanding shave shaved shaving trim trimmed trimming bend bending bent tilt tilted modify modified alter altered
    deepen deepened damaged bevelled beveled polish polished oil oiled plated dirty rusty rusted machine machined
    shortened solely exclusively alone except excepting excluding besides save rather lieu replacing replacement
    substituting substitution standing fewer lots equally tightest loosest closest snuggest largest greatest smallest
    thinnest thickest widest narrowest biggest heaviest lightest deepest shallowest highest lowest tallest newest oldest
    squeeze squeezed squeezing jam jammed false untrue lie myth mistake mistaken incorrect nonsense impossible unlikely
    unable fail fails failed mutual mutually
    cheapest strongest weakest simplest fewest half twice narrower count job work`,
  filling: `a an the this that these those it its they them there here he she you your yours i i'm im we us our my me
    of from as about than then so now also too just only really actually ever still yet maybe perhaps exactly precisely
    please kindly tell show give say said says know knows known knowing wonder wondering ask asked asking question
    answer hi hello hey dear thanks thank cheers sir madam ok okay right correct correctly true truly if whether when
    while else other others another one ones two three four five six seven eight nine ten eleven twelve some
    many more most less least very quite well good fine wrong out up down along together like likes want help find see
    look looks think thinks thought believe guess suppose sure again once always sometimes often possible possibly
    actual physically full fully way all-section number numbers name names named called call kind sort type thing things
    stuff length lengths long longer longest short shorter size sizes chamber chambers pin pins group master real
    really exist exists know everybody people person somebody new old uncut whole let's anyhow anyway simply
    better best worse big bigger small smaller thin thinner thinnest thicker thickest wide wider large larger mine
    need supposed happen happens happened happening but because since although though without same's that's
    it's there's how's could've would've make makes made own owns holder holders have's heard told read wish i'd i've
    we've you've college school campus family chart list's lot sense stand stands`,
};

const CLASS_OF: ReadonlyMap<string, WordClass> = new Map([
  ...Object.entries(CLASSES)
    .reverse()
    .flatMap(([name, words]) => words.split(/\s+/).map((word) => [word, name as WordClass] as const)),
  ...[...KIND_WORDS.keys()].map((word) => [word, 'kind'] as const),
]);

/** What a word in small letters does in a question, or null where it is none of the words that questions are made of. */
export function classOf(plain: string): WordClass | null {
  return CLASS_OF.get(plain) ?? null;
}

/** Whether a verb stands in the form that goes with "is" and "be": "opened", "taken". */
export function isParticiple(plain: string): boolean {
  return /(ed|en|used|put|kept)$/.test(plain) && !/^(open|listen)$/.test(plain);
}
