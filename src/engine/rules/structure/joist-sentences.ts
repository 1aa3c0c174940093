import type { Sentences } from '../../define-rule.ts';
import type { JoistFaultKind } from '../../structure/joist-faults.ts';

/** A second thing wrong at the same joists, after "Also:". */
export const ALSO: Readonly<Partial<Record<JoistFaultKind, string>>> = {
  holePlace: 'a hole is outside its band',
  notchPlace: 'a notch is outside its band',
  holeSize: 'a hole is too wide',
  notchDepth: 'a notch is too deep',
  tooClose: 'two holes are too close',
  toNotch: 'a hole is too close to a notch',
  bottom: 'it is let in from below',
  offCentre: 'a hole is off the centre line',
  loaded: 'one of the joists carries more than the others',
  lengthwise: 'it lies along in a joist',
  flange: 'it runs into a flange',
};

const at = '{run} at the joists of the {space}';

const HOLE_PLACE: Sentences = {
  title: `${at}: {found} from the near end, outside the band for holes`,
  why: 'Nearer a bearing or the middle of the span a hole takes timber that is working hardest.{also}',
  todo: 'Holes go {bands}.',
};

export const JOIST_SENTENCES: { fault: Sentences; cantTell: Sentences; pass: string } & Record<
  string,
  Sentences | string
> = {
  fault: HOLE_PLACE,
  truss: {
    title: `${at}: trusses are never cut`,
    why: 'Every member of a truss is sized to carry its share; a notch or hole in one of them can bring the roof down.{also}',
    todo: 'Go between, over or under the members.',
  },
  told: {
    title: `${at}: they may not be cut`,
    why: 'The survey says nothing may be cut here, and as drawn the pipe goes through the timber.{also}',
    todo: 'Go between, over or under them, or get it agreed first.',
  },
  lengthwise: {
    title: `${at}: it lies along in one of them`,
    why: 'As drawn the pipe runs or drops inside the timber itself.{also}',
    todo: 'Move it sideways into the space between two joists.',
  },
  shallow: {
    title: `${at}: {found} deep, too shallow to cut`,
    why: 'Timber of {wanted} or less has nothing to spare for a notch or a hole.{also}',
    todo: 'Go over or under them, or run along between them.',
  },
  flange: {
    title: `${at}: it runs into a flange`,
    why: 'Top and bottom timber of these joists carry the load and are never cut; only what lies between them may be passed.{also}',
    todo: 'Raise or lower the pipe clear of top and bottom timber.',
  },
  holePlace: HOLE_PLACE,
  notchPlace: {
    title: `${at}: {found} from the near end, outside the band for notches`,
    why: 'Towards the middle of the span a notch takes the timber that is working hardest.{also}',
    todo: 'Notches go {bands}. At mid height it would be a hole, with a band of its own.',
  },
  holeSize: {
    title: `${at}: a hole of {found}, at most {wanted}`,
    why: 'A hole is at most a quarter of the depth of the timber, with a cap in mm.{also}',
    todo: 'Take smaller pipe, go over or under, or ask an engineer.',
  },
  notchDepth: {
    title: `${at}: a notch {found} deep, at most {wanted}`,
    why: 'A notch is at most an eighth of the depth of the timber, with a cap in mm; deeper ones make floors dip and boards pop.{also}',
    todo: 'Drill at mid height in the band for holes, or run along between the joists.',
  },
  tooClose: {
    title: `${at}: {found} between centres, beside {other}`,
    why: 'Two holes in one joist stand three diameters of the larger apart, which is {wanted} here.{also}',
    todo: 'Part the pipes along the joist, inside the band.',
  },
  toNotch: {
    title: `${at}: {found} from hole to notch, beside {other}`,
    why: 'Between a hole and a notch of one joist {wanted} of whole timber is left; some guidance asks for the depth of the joist.{also}',
    todo: 'Part the pipes along the joist, or drill for both.',
  },
  bottom: {
    title: `${at}: let in from below`,
    why: 'The underside of a joist is stretched; a notch there is the worst, and never with another in the top of the same joist.{also}',
    todo: 'Notch the top, drill at mid height, or clip below the joists.',
  },
  offCentre: {
    title: `${at}: {found} off the centre line`,
    why: 'Timber along the middle of the depth carries least; a hole off it takes more than its share.{also}',
    todo: 'Raise or lower the pipe to mid height of the joists.',
  },
  loaded: {
    title: `${at}: one of them carries more`,
    why: 'A {joist} is there for a load; what the others may lose it may not.{also}',
    todo: 'Keep out of that one, or ask an engineer.',
  },
  deep: {
    title: `${at}: one standard leaves joists this deep to an engineer`,
    why: 'One house-building standard sends joists over 250 deep to an engineer; span guidance gives figures for 275 and 300 and caps the cut in mm.',
    todo: 'Say which of the two the job goes by, or ask.',
  },
  edition: {
    title: "Can't tell where joists may be cut",
    why: 'The figures are missing: {missing}.',
    todo: 'Pin an edition that is here, or keep to the one you have.',
  },
  cantTell: {
    title: `${at}: can't tell whether they may be cut so`,
    why: 'Not told: {missing}.{also}',
    todo: "Find it out on site and set it; for made joists look in the maker's own chart.",
  },
  pass: 'Nothing is cut, or every cut is inside its band and size.',
};
