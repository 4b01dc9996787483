package camberwell.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a heading says its column is")
class HeadingWordsTest {

    private static Optional<HeadingWords.Guess> best(String name, String unit) {
        List<HeadingWords.Guess> guesses = HeadingWords.guesses(new Heading(0, name, name, unit));
        return guesses.stream().findFirst();
    }

    @ParameterizedTest(name = "{0} is {1}")
    @DisplayName("in the trade's words, plain or short, in several languages")
    @CsvSource({
        "Time, time", "time_s, time", "Elapsed Time, time", "Zeit, time", "Temps, time", "t, time", "Timestamp, time",
        "Lap, lap", "LapNumber, lap", "lap_no, lap", "Runde, lap", "Tour, lap", "Vuelta, lap",
        "Lap Time, lap-time", "Distance, distance", "LapDist, distance", "Strecke, distance", "lap_distance_m, distance",
        "Speed, speed", "GPS Speed, speed", "vCar, speed", "Geschwindigkeit, speed", "Vitesse, speed", "Velocità, speed",
        "Velocidad, speed", "speed_kmh, speed", "Ground Speed, speed", "Vehicle Speed, speed", "v, speed",
        "Steering Wheel Angle, steering", "SteeringAngle, steering", "Lenkwinkel, steering", "Lenkradwinkel, steering",
        "Angle volant, steering", "steer_deg, steering", "Sterzo, steering", "SWA, steering", "Steer, steering",
        "Lateral Acceleration, lateral-acceleration", "LatAcc, lateral-acceleration", "G Lat, lateral-acceleration",
        "Lat G, lateral-acceleration", "ay, lateral-acceleration", "AccelY, lateral-acceleration",
        "Accel Lateral, lateral-acceleration", "Querbeschleunigung, lateral-acceleration",
        "Accélération latérale, lateral-acceleration", "ay_g, lateral-acceleration",
        "G Force Lat, lateral-acceleration", "lateral_g, lateral-acceleration", "Acc Y, lateral-acceleration",
        "Accelerazione laterale, lateral-acceleration",
        "Longitudinal Acceleration, longitudinal-acceleration", "Längsbeschleunigung, longitudinal-acceleration",
        "ax, longitudinal-acceleration", "G Long, longitudinal-acceleration", "Accel X, longitudinal-acceleration",
        "az, vertical-acceleration", "Vertical Acceleration, vertical-acceleration",
        "Yaw Rate, yaw-rate", "YawRate, yaw-rate", "Gierrate, yaw-rate", "Gyro Z, yaw-rate", "yaw_rate_deg_s, yaw-rate",
        "Vitesse de lacet, yaw-rate", "Giergeschwindigkeit, yaw-rate", "Yaw Velocity, yaw-rate", "wz, yaw-rate",
        "Throttle, throttle", "Throttle Position, throttle", "TPS, throttle", "Gaspedal, throttle", "Gas, throttle",
        "Drosselklappe, throttle", "Accelerator Pedal, throttle", "throttle_pct, throttle", "Throttle %, throttle",
        "Brake, brake", "Brake Pressure, brake", "Bremse, brake", "Bremsdruck, brake", "Frein, brake", "brake_bar, brake",
        "Brake Pressure Front, front-brake", "Bremsdruck vorne, front-brake", "Brake Pedal, brake",
        "Wheel Speed FL, front-left-wheel-speed", "WheelSpeedFrontLeft, front-left-wheel-speed",
        "ws_rr, rear-right-wheel-speed", "Raddrehzahl VL, front-left-wheel-speed", "Speed RL, rear-left-wheel-speed",
        "Radgeschwindigkeit hinten rechts, rear-right-wheel-speed", "wheel_speed_lf_kmh, front-left-wheel-speed",
        "Front Left Wheel Speed, front-left-wheel-speed",
        "Damper FL, front-left-damper", "Suspension Travel RR, rear-right-damper", "Federweg HL, rear-left-damper",
        "Shock Pos LF, front-left-damper", "damper_travel_fr_mm, front-right-damper",
        "Ride Height Front, front-ride-height", "Tyre Temp FL Inner, front-left-tread-inner",
        "Tire Temp RR Middle, rear-right-tread-middle", "Reifentemperatur VL aussen, front-left-tread-outer",
        "Tyre Temperature FL, front-left-tread", "Tyre Pressure RL, rear-left-tyre-pressure",
        "Reifendruck VR, front-right-tyre-pressure", "TPMS FL, front-left-tyre-pressure",
        "Latitude, latitude", "GPS Lat, latitude", "Longitude, longitude", "gps_lon, longitude", "Position X, position-x",
        "pos_y, position-y", "X, position-x"})
    void known(String heading, String channel) {
        assertEquals(channel, best(heading, "").map(it -> it.channel().id()).orElse("nothing"));
    }

    @ParameterizedTest(name = "{0} [{1}] is {2}")
    @DisplayName("cut short as a logger's display has it, and where two languages have one word, by its unit")
    @CsvSource({"Querb., g, lateral-acceleration", "Längsb., g, longitudinal-acceleration", "Geschw., km/h, speed",
        "Gierr., deg/s, yaw-rate", "Lenkw., deg, steering", "Drosselkl., %, throttle", "Bremsdr. vorn, bar, front-brake",
        "Raddreh. VL, km/h, front-left-wheel-speed", "Federw. HL, mm, rear-left-damper", "Drehrate, deg/s, yaw-rate",
        "Seitenbeschleunigung, g, lateral-acceleration", "Lenkeinschlag, deg, steering", "Messzeit, s, time",
        "VSPD, km/h, speed", "GYRO, deg/s, yaw-rate", "psi_p, rad/s, yaw-rate", "a_y, m/s2, lateral-acceleration",
        "Road wheel angle, deg, steering", "STRG, deg, steering", "Radlenkwinkel, deg, steering", "delta_H, deg, steering",
        "Side accel, m/s2, lateral-acceleration", "Pedal acc, %, throttle", "Accel Pedal, %, throttle",
        "alpha_FP, %, throttle", "Drosselklappenwinkel, %, throttle", "HBZ-Druck, bar, brake", "p_HBZ, bar, brake",
        "BPRS, bar, brake", "Rundenzähler, '', lap", "Rd., '', lap", "LAPN, '', lap",
        "Tempo, km/h, speed", "Tempo, s, time", "Tempo giro, s, lap-time"})
    void cutShort(String heading, String unit, String channel) {
        assertEquals(channel, best(heading, unit).map(it -> it.channel().id()).orElse("nothing"));
    }

    @ParameterizedTest(name = "{0} is not taken for anything")
    @DisplayName("what speaks of something else is left alone")
    @CsvSource({"Engine Speed", "Oil Temperature", "Brake Temp FL", "Wind Speed", "Damper Velocity FL", "Brake Bias",
        "Steering Torque", "Steering Speed", "Throttle Body Temp", "Fuel Pressure", "Best Lap Time", "Air Temperature",
        "Comment", "Gear", "Gyro X", "Roll Gyro", "Motordrehzahl", "Heading", "Target Speed"})
    void foreign(String heading) {
        assertEquals("nothing", best(heading, "").map(it -> it.channel().id()).orElse("nothing"));
    }

    @ParameterizedTest(name = "{0} is in {1}")
    @DisplayName("a unit at the end of the heading is read as one")
    @CsvSource({"speed_kmh, KILOMETRE_PER_HOUR", "Speed mph, MILE_PER_HOUR", "yaw_rate_deg_s, DEGREE_PER_SECOND",
        "Yaw Rate rad/s, RADIAN_PER_SECOND", "ay_ms2, METRE_PER_SECOND_SQUARED", "lateral_g, GRAVITY", "time_ms, MILLISECOND",
        "speed_m_s, METRE_PER_SECOND", "Throttle %, PERCENT", "brake_bar, BAR", "damper_fl_mm, MILLIMETRE",
        "tyre_temp_fl_c, CELSIUS"})
    void units(String heading, LoggedUnit unit) {
        assertEquals(Optional.of(unit), best(heading, "").flatMap(HeadingWords.Guess::unit));
    }

    @ParameterizedTest(name = "{0} in {1} is {2}")
    @DisplayName("a unit that cannot be the channel's speaks against it")
    @CsvSource({"Yaw, deg, nothing", "Yaw, deg/s, yaw-rate", "Lateral, g, lateral-acceleration"})
    void wrongUnits(String heading, String unit, String channel) {
        assertEquals(channel, best(heading, unit).map(it -> it.channel().id()).orElse("nothing"));
    }
}
