/**
 * Where rules come from: the built-in folder, and rule folders and zip files of an instructor's own, read within limits
 * and put together to one set.
 */
package camberwell.pack;
