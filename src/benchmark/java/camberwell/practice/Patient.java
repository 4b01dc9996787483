package camberwell.practice;

import camberwell.car.Car;

/**
 * A car with something wrong put into it.
 *
 * @param car as it should be, as its file says: what an adviser knows of it
 * @param fault what is wrong with it
 * @param number among the faults of its car: every second one is set aside
 */
record Patient(Car car, Fault fault, int number) {

    boolean aside() {
        return number % 2 == 1;
    }
}
