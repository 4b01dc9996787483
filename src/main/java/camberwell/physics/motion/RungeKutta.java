package camberwell.physics.motion;

/** The classical Runge-Kutta method of the fourth order, its step fixed. */
final class RungeKutta {

    /** Rates of change of a state at a time. */
    interface Rates {
        void at(double time, double[] state, double[] rates);
    }

    private final double[] first;
    private final double[] second;
    private final double[] third;
    private final double[] fourth;
    private final double[] between;

    RungeKutta(int size) {
        first = new double[size];
        second = new double[size];
        third = new double[size];
        fourth = new double[size];
        between = new double[size];
    }

    /** Takes the state a step further, in place. */
    void step(Rates rates, double time, double step, double[] state) {
        rates.at(time, state, first);
        add(state, first, 0.5 * step);
        rates.at(time + 0.5 * step, between, second);
        add(state, second, 0.5 * step);
        rates.at(time + 0.5 * step, between, third);
        add(state, third, step);
        rates.at(time + step, between, fourth);
        for (int i = 0; i < state.length; i++) {
            state[i] += step / 6.0 * (first[i] + 2.0 * (second[i] + third[i]) + fourth[i]);
        }
    }

    private void add(double[] state, double[] rate, double step) {
        for (int i = 0; i < state.length; i++) {
            between[i] = state[i] + step * rate[i];
        }
    }
}
