package camberwell.saying;

import java.util.List;
import java.util.Set;

/** Words for a problem, whatever it is. */
final class Trouble {

    private static final Set<String> TROUBLES = Set.of("problem", "issue", "trouble", "complaint", "gripe", "wrong");
    private static final Set<String> DENYING = Set.of("no", "not", "nothing", "without", "never", "zero", "hardly", "any", "sin",
            "senza",
            "pas", "kein");
    /** How many words before a problem may deny it. */
    private static final int DENIED = 5;

    private Trouble() {
    }

    /** Whether a problem is named that is not denied. */
    static boolean isIn(List<Token> tokens) {
        for (int at = 0; at < tokens.size(); at++) {
            if (TROUBLES.contains(tokens.get(at).stem())
                    && tokens.subList(Math.max(0, at - DENIED), at).stream().noneMatch(token -> DENYING.contains(token.stem()))) {
                return true;
            }
        }
        return false;
    }
}
