/**
 * Case and car files in YAML, read into records and written back. Every problem of a file is collected before reading
 * fails, each with its line, its column and, where one is near, the word that was meant.
 */
package camberwell.input;
