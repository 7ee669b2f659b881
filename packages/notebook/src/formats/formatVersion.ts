/** The form of the whole file; what stands in its changes has a version of its own. */
export const formatVersion = 1;
/** What the key `schema` of a file begins with. */
export const formatName = "captray/notebook/";
