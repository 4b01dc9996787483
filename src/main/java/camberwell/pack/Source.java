package camberwell.pack;

/**
 * What there is to compile.
 *
 * @param name the file's name, for messages
 * @param text the file
 * @param sentences whether it is written in sentences rather than in DRL
 */
public record Source(String name, String text, boolean sentences) {
}
