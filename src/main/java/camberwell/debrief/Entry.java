package camberwell.debrief;

/**
 * One question and its answer.
 *
 * @param said as it was typed; empty where nobody typed it
 * @param complaint the complaint that it was about, in words, as it stood then; empty where it was about none
 */
public record Entry(Topic topic, String complaint, Answer answer, String said) {
}
