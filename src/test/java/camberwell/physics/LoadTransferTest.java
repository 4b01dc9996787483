package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A published-style worked car: inputs and algebra from a public transcription, outputs computed from the formulas of
 * Milliken and Milliken, Race Car Vehicle Dynamics, ch. 16 and 18. 3400 lb, 1020/680 lb corner weights, wheelbase
 * 9.5 ft, track 5 ft, centre of gravity at 1.5 ft, roll centres at 0.25/0.625 ft, roll rates 1222/873 lb ft/deg.
 */
class LoadTransferTest {

    private static final double G = 9.81;
    private static final double POUND_FORCE = 4.4482216;
    private static final double FOOT = 0.3048;
    private static final double MASS = 3400 * POUND_FORCE / G;
    private static final double FRONT_RATE = 1222 * POUND_FORCE * FOOT * 180 / Math.PI;
    private static final double REAR_RATE = 873 * POUND_FORCE * FOOT * 180 / Math.PI;

    @Test
    @DisplayName("worked car in a banked turn at 0.923347 g across the road")
    void bankedTurn() {
        LoadTransfer.Lateral transfer = car(FRONT_RATE, REAR_RATE, 0.923347 * G);
        assertEquals(497.041, transfer.front().total() / POUND_FORCE, 0.005);
        assertEquals(444.773, transfer.rear().total() / POUND_FORCE, 0.005);
        assertEquals(0.527749, transfer.frontShare(), 1e-6);
        assertEquals(1.64836, Math.toDegrees(transfer.roll()), 2e-5);
        // The bank presses 2403.60 lb on the front axle and 1602.40 lb on the rear one.
        assertEquals(1698.84, 2403.60 / 2 + transfer.front().total() / POUND_FORCE, 0.02);
        assertEquals(704.76, 2403.60 / 2 - transfer.front().total() / POUND_FORCE, 0.02);
        assertEquals(1245.97, 1602.40 / 2 + transfer.rear().total() / POUND_FORCE, 0.02);
        assertEquals(356.43, 1602.40 / 2 - transfer.rear().total() / POUND_FORCE, 0.02);
    }

    @Test
    @DisplayName("the same car on the flat at 1 g, path by path")
    void flatOneG() {
        LoadTransfer.Lateral transfer = car(FRONT_RATE, REAR_RATE, G);
        assertEquals(453.719, transfer.front().geometric(), 1e-3);
        assertEquals(1940.775, transfer.front().elastic(), 1e-3);
        assertEquals(756.198, transfer.rear().geometric(), 1e-3);
        assertEquals(1386.495, transfer.rear().elastic(), 1e-3);
        assertEquals(2394.494, transfer.front().total(), 1e-3);
        assertEquals(2142.693, transfer.rear().total(), 1e-3);
        assertEquals(4537.186, transfer.front().total() + transfer.rear().total(), 2e-3);
        assertEquals(1.78520, Math.toDegrees(transfer.roll()), 5e-6);
    }

    @Test
    @DisplayName("20 % more front roll stiffness takes the front share from 0.528 to 0.560, rear to 0.495")
    void rollStiffnessMovesTheShare() {
        assertEquals(0.559673, car(1.2 * FRONT_RATE, REAR_RATE, G).frontShare(), 1e-6);
        assertEquals(0.494842, car(FRONT_RATE, 1.2 * REAR_RATE, G).frontShare(), 1e-6);
    }

    // B. Beckman, The Physics of Racing, part 1, 1991: 3200 lb, 20 in, 100 in, braking at 1 g: 2240 and 960 lb.
    @Test
    @DisplayName("braking at 1 g loads the front axle of the textbook car with 640 lb more")
    void braking() {
        double mass = 3200 * POUND_FORCE / G;
        double moved = LoadTransfer.longitudinal(mass, 20 * 0.0254, 100 * 0.0254, -G) / POUND_FORCE;
        assertEquals(2240, 1600 - moved, 1e-9);
        assertEquals(960, 1600 + moved, 1e-9);
    }

    // CommonRoad vehicle 1 (TUM, BSD 3-clause): 21 898 N/m on 1.390 m and a bar of 12 880 make 34 032 N m/rad.
    @Test
    void springsAndBarAddUp() {
        assertEquals(34_032, LoadTransfer.springRollStiffness(21_898, 1.390) + 12_880, 5);
    }

    @Property
    void allPathsTogetherHoldTheCarUp(@ForAll @DoubleRange(min = 5e3, max = 2e5) double frontRate,
            @ForAll @DoubleRange(min = 5e3, max = 2e5) double rearRate,
            @ForAll @DoubleRange(min = 0, max = 80) double unsprung,
            @ForAll @DoubleRange(min = -12, max = 12) double lateral) {
        LoadTransfer.Axle front = new LoadTransfer.Axle(600, 1.5, 0.05, frontRate, unsprung, 0.3);
        LoadTransfer.Axle rear = new LoadTransfer.Axle(500, 1.6, 0.10, rearRate, unsprung, 0.3);
        LoadTransfer.Lateral transfer = LoadTransfer.lateral(front, rear, 0.5, lateral);
        double moment = transfer.front().total() * 1.5 + transfer.rear().total() * 1.6;
        assertEquals(lateral * (1100 * 0.5 + 2 * unsprung * 0.3), moment, 1e-8 * (1 + Math.abs(moment)));
    }

    private static LoadTransfer.Lateral car(double frontRate, double rearRate, double lateral) {
        LoadTransfer.Axle front = new LoadTransfer.Axle(0.6 * MASS, 5 * FOOT, 0.25 * FOOT, frontRate, 0, 0);
        LoadTransfer.Axle rear = new LoadTransfer.Axle(0.4 * MASS, 5 * FOOT, 0.625 * FOOT, rearRate, 0, 0);
        return LoadTransfer.lateral(front, rear, 1.5 * FOOT, lateral);
    }
}
