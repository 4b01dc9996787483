package camberwell.channel;

/**
 * The heading of one column.
 *
 * @param index place of the column, counted from 0
 * @param text as it is written
 * @param name the same without a unit in brackets
 * @param unit as it is written, in brackets or in the row below; empty where there is none
 */
record Heading(int index, String text, String name, String unit) {
}
