package camberwell.language;

import camberwell.cases.Paddock;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayName("What a condition asks of one fact, written on a line and read back")
class AskedOfFactTest {

    @Test
    @DisplayName("is the same question, for every condition of every rule")
    void sameQuestion() {
        int told = 0;
        for (RuleText rule : Paddock.rules().rules().values()) {
            for (Condition condition : rule.conditions()) {
                if (AskedOfFact.tells(condition.question())) {
                    told++;
                    Question back = AskedOfFact.read(AskedOfFact.write(condition.question()));
                    assertTrue(back.sameAs(condition.question()), rule.name() + ": " + condition.text());
                    assertEquals(condition.negative(), back.negative(), rule.name() + ": " + condition.text());
                }
            }
        }
        assertTrue(told > Paddock.rules().rules().size() / 2, told + " conditions");
    }
}
