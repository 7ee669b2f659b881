/** The form of the records that this code writes. Every change carries the form it was written in; a step up needs an upgrade in the record's file and a fixture of the form before. */
export const recordsVersion = 1;
