package camberwell.debrief;

/**
 * What one question is about.
 *
 * @param complaint the index of the complaint that it is about; 0 where it is about none
 */
public record Topic(Field field, int complaint) {

    /** A topic that is not about one complaint. */
    public static Topic of(Field field) {
        return new Topic(field, 0);
    }
}
