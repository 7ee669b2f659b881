import * as z from "zod/mini";
import {
  link,
  moment,
  notNegative,
  number,
  positive,
  result,
  sizeMm,
  source,
  typed,
  typedSigned,
  typedText,
  word,
} from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** What the meter said, in the way it was read; everything of one reading is one field. */
const metering = z.exactOptional(z.enum(["reflected", "incident"]));
const reading = z.discriminatedUnion("way", [
  z.strictObject({ way: z.literal("time"), kind: metering, timeS: typed, fNumber: typed, iso: typed }),
  z.strictObject({ way: z.literal("ev"), kind: metering, ev: typedSigned, iso: typed }),
  z.strictObject({ way: z.literal("ev100"), kind: metering, ev100: typedSigned }),
  z.strictObject({ way: z.literal("luminance"), luminanceCdM2: typed }),
  z.strictObject({ way: z.literal("illuminance"), illuminanceLx: typed }),
]);
export type Reading = z.output<typeof reading>;

/** How the camera stands to the subject, in the way it was found. */
const focus = z.discriminatedUnion("by", [
  z.strictObject({ by: z.literal("distant") }),
  z.strictObject({ by: z.literal("extension"), extensionMm: typed }),
  z.strictObject({ by: z.literal("travel"), travelMm: typedSigned }),
  z.strictObject({ by: z.literal("magnification"), magnification: typedSigned }),
  z.strictObject({ by: z.literal("imageSize"), imageSizeMm: typed, subjectSizeMm: typed }),
  z.strictObject({ by: z.literal("subjectDistance"), subjectDistanceMm: typed }),
  z.strictObject({
    by: z.literal("totalDistance"),
    totalDistanceMm: typed,
    hiatusMm: z.exactOptional(number),
    larger: z.exactOptional(z.boolean()),
  }),
]);
export type Focus = z.output<typeof focus>;

const filter = z.discriminatedUnion("by", [
  z.strictObject({ by: z.literal("neutralDensity"), value: notNegative, sdStops: z.exactOptional(notNegative) }),
  z.strictObject({ by: z.literal("factor"), value: positive, sdStops: z.exactOptional(notNegative) }),
  z.strictObject({ by: z.literal("stops"), value: number, sdStops: z.exactOptional(notNegative) }),
]);

const share = z.number().check(z.gte(0), z.lte(1));

/** A small JPEG as a data address: about 1000 points wide, so that a notebook of a hundred scenes stays light. */
export const mostPhotographCharacters = 180_000;
const photograph = z
  .string()
  .check(z.maxLength(mostPhotographCharacters), z.regex(/^data:image\/jpeg;base64,[A-Za-z0-9+/]+={0,2}$/));

/** A day by the calendar, without an hour. */
const calendarDay = z.string().check(z.regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/));

/** A subject before the camera: set-up, named areas and their readings. It may stand by itself before any sheet does. */
export const scene = record("scene", {
  fields: {
    subject: word,
    where: word,
    /** The hour wanted, in the person's own words. */
    hourWanted: typedText,
    outdoors: z.boolean(),
    /** How long the subject keeps still. */
    stillS: typed,
    light: z.strictObject({ source, lampId: z.exactOptional(link) }),
    result,
    cameraId: link,
    lensId: link,
    /** Item id of one of the lens's stops. */
    stopId: link,
    meterId: link,
    paperBoxId: link,
    exposureIndexId: link,
    handId: link,
    recipeId: link,
    /** The variable-contrast filter before the lens, by the name it has on the box. */
    contrastFilter: word,
    /** Slid away from the advice: the cap time the person wants. */
    chosenTimeS: typed,
    /** Flash wished for this scene, and with which set-up. */
    flash: z.strictObject({
      timeS: notNegative,
      flashLampId: z.exactOptional(link),
      when: z.enum(["beforeLoading", "inCamera", "afterExposure"]),
    }),
    /** Areas that may be lost in black or white. */
    letGoAreaIds: z.array(link).check(z.maxLength(200)),
    focus,
    focusSdStops: notNegative,
    /** The picture on the paper, where the camera does not say it. */
    format: sizeMm,
    /** The widest disc that still passes for a point: from the format, for a print in the hand, or as typed. */
    confusion: z.discriminatedUnion("by", [
      z.strictObject({ by: z.literal("format") }),
      z.strictObject({ by: z.literal("inTheHand") }),
      z.strictObject({ by: z.literal("typed"), confusionMm: typed }),
    ]),
    photograph,
    /** Where an area lies in the photograph, as shares of its width and height from the top left. */
    marks: z.array(z.strictObject({ areaId: link, x: share, y: share })).check(z.maxLength(200)),
    /** Where on earth, for the sun. */
    site: z.strictObject({
      latitudeDeg: z.number().check(z.gte(-90), z.lte(90)),
      longitudeEastDeg: z.number().check(z.gte(-180), z.lte(180)),
    }),
    /** The day and the sky that an hour is asked for; `facesDeg` of an upright subject, from north over east. */
    daylight: z.strictObject({
      day: calendarDay,
      sky: z.enum(["clear", "partlyCloudy", "overcast"]),
      facesDeg: z.exactOptional(z.number().check(z.gte(0), z.lt(360))),
      snow: z.exactOptional(z.boolean()),
    }),
    /** The cap times between which an hour is asked for. */
    timeWanted: z.strictObject({ leastS: z.exactOptional(typed), mostS: z.exactOptional(typed) }),
    /** From the lamp to the subject. */
    lampDistanceMm: typed,
    /** The area that is the ground, and how many stops above (+) or below mid it shall stand; none: the mean. */
    place: z.strictObject({ areaId: link, stops: number }),
    /** "I worked it out as …". */
    saidTime: z.strictObject({ timeS: typed, roundingS: z.exactOptional(notNegative) }),
  },
  start: { subject: "" },
  lists: {
    areas: {
      fields: {
        name: word,
        /** The reading that holds now; older ones stay in the list. */
        readingId: link,
      },
      start: { name: "" },
    },
    readings: {
      fields: {
        areaId: link,
        reading,
        takenAt: moment,
        /** Not read itself: the middle of these readings of one area. */
        averageOf: z.array(link).check(z.maxLength(50)),
        /** Not read itself: moved by the difference that another reading showed when the light moved. */
        shifted: z.strictObject({ byStops: number, becauseOfId: link }),
      },
    },
    filters: { fields: { name: word, filter }, start: { name: "" } },
  },
});
export type Scene = RecordFrom<typeof scene>;
