/**
 * The parts of a fowl that judges speak of, and the words they use. A part that a standard has no clause for is told under the wider one it belongs to: a saddle under the back, a back under the body.
 * Common practice, no source.
 */
export interface PartOfFowl {
  readonly id: string
  /** single words, small letters; every form that is used */
  readonly words: readonly string[]
  readonly within: string | null
}

const part = (id: string, words: string, within: string | null = null): PartOfFowl => ({id, words: words.split(' '), within})

export const PARTS_OF_FOWL: readonly PartOfFowl[] = [
  part('head', 'head heads headed skull'),
  part('comb', 'comb combs combed ridge ridges beading', 'head'),
  part('wattles', 'wattle wattles', 'head'),
  part('lobes', 'lobe lobes earlobe earlobes', 'head'),
  part('face', 'face faces', 'head'),
  part('eyes', 'eye eyes eyed', 'head'),
  part('beak', 'beak beaks', 'head'),
  part('crest', 'crest crests crested beard beards bearded muff muffs', 'head'),
  part('neck', 'neck necks'),
  part('hackle', 'hackle hackles', 'neck'),
  part('body', 'body bodies bodied depth width breadth'),
  part('back', 'back backs', 'body'),
  part('saddle', 'saddle saddles cushion cushions', 'back'),
  part('shoulders', 'shoulder shoulders', 'body'),
  part('breast', 'breast breasts chest', 'body'),
  part('keel', 'keel keels breastbone', 'body'),
  part('abdomen', 'abdomen belly pelvis', 'body'),
  part('wings', 'wing wings flight flights primaries secondaries'),
  part('tail', 'tail tails tailed sickle sickles covert coverts'),
  part('legs', 'leg legs legged'),
  part('thighs', 'thigh thighs', 'legs'),
  part('shanks', 'shank shanks spur spurs', 'legs'),
  part('feet', 'foot feet', 'legs'),
  part('toes', 'toe toes toenail toenails', 'feet'),
  part('skin', 'skin'),
  part('type', 'type carriage outline stance station'),
  part('plumage', 'plumage feather feathers feathering feathered'),
  part('colour', 'colour colours color colors coloured sheen lacing barring striping stripe stripes brass brassy brassiness'),
]
