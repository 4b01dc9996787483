package camberwell.language;

/** The characters that a person can see, and those that would hide something. */
public final class Characters {

    private Characters() {
    }

    /** Where the first character stands that has no place in a rule; -1 where there is none. */
    static int odd(String line) {
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean plain = c >= ' ' && c <= '~';
            if (c == '\\' || !plain && c != '\t' && isControl(c)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether a character could hide or move what a person sees: controls, format characters, odd line ends. */
    public static boolean isControl(char c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
                    Character.PRIVATE_USE, Character.UNASSIGNED -> true;
            default -> false;
        };
    }
}
