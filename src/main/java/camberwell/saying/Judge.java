package camberwell.saying;

import camberwell.classifier.Example;
import camberwell.classifier.Network;
import camberwell.classifier.NetworkTraining;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Set;

/**
 * Tells from the evidence how likely something is right, by how often the like was right of sayings that the ear had not heard
 * (stacked generalization: Wolpert, Neural Networks 5, 1992, 241-259).
 */
final class Judge {

    private static final String RIGHT = "right";
    private static final NetworkTraining.Plan PLAN = new NetworkTraining.Plan(16, 5, 0.2, 0.1, 0.02, 10);
    private static final int SEED = 1;

    private final Network network;

    /** What spoke for something, and whether it was right. */
    record Case(Evidence evidence, boolean right) {
    }

    private Judge(Network network) {
        this.network = network;
    }

    static Judge taught(List<Case> cases) {
        return new Judge(NetworkTraining.of(cases.stream()
                .map(one -> new Example(one.evidence().features(), one.right() ? Set.of(RIGHT) : Set.of(), Set.of())).toList(),
                Set.of(), PLAN, SEED));
    }

    /** How likely it is right, 0 to 1. */
    double likely(Evidence evidence) {
        return network.probabilities(evidence.features())[0];
    }

    void write(DataOutputStream out) throws IOException {
        network.write(out);
    }

    static Judge read(ByteBuffer in) {
        return new Judge(Network.read(in));
    }
}
