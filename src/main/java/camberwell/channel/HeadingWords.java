package camberwell.channel;

import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Guesses from the words of a heading which channel its column is. Headings are taken apart into words, words of several
 * languages and their usual short forms into one set of plain ones, and those are held against what each channel is
 * called. The words are the trade's; which of them belong to one thing is judgement: common practice, no source.
 */
final class HeadingWords {

    /** Words by what they stand for; a word on the right may be several on the left. */
    private static final Map<String, List<String>> MEANING = new HashMap<>();

    static {
        means("time", "time", "zeit", "temps", "tiempo", "tid", "tijd", "timestamp", "elapsed", "clock",
                "uhrzeit", "zeitstempel", "laufzeit", "messzeit", "fahrzeit", "t", "chrono");
        // An Italian's time and a German's speed: the unit tells, or what else is there.
        means("tempo", "tempo");
        means("lap", "lap", "runde", "tour", "vuelta", "giro", "volta", "ronde", "laps", "lapno", "lapnumber", "lapnum",
                "lapcount", "lapindex", "rundennummer", "rundenzahl", "rundennr", "varv", "lapn", "runden", "rd", "lapctr");
        means("lap time", "laptime", "rundenzeit", "currentlaptime");
        means("lap distance", "lapdistance", "lapdist", "rundenstrecke", "rundendistanz");
        means("distance", "distance", "dist", "distanz", "strecke", "weg", "wegstrecke", "distancia", "distanza",
                "laufstrecke", "odometer", "odo", "fahrstrecke", "travelled", "afstand");
        means("speed", "speed", "velocity", "vel", "geschwindigkeit", "vitesse", "velocidad", "velocita", "v", "spd",
                "velocidade", "snelheid", "kmh", "kph", "hastighet", "vgps", "vx", "vspd", "tachospeed");
        means("car speed", "vcar", "vehiclespeed", "groundspeed", "carspeed", "fahrgeschwindigkeit", "vveh",
                "fahrzeuggeschwindigkeit", "roadspeed", "vehspeed");
        means("gps speed", "gpsspeed");
        means("steering", "steering", "steer", "swa", "lenkwinkel", "lenkung", "lenkrad", "lenkradwinkel", "volant",
                "volante", "sterzo", "handwheel", "steerangle", "steeringangle", "steerang", "stuur", "stuurhoek",
                "direccion", "steered", "lenk", "steeringwheel", "steeringwheelangle", "stw", "lenkeinschlag", "strg", "deltah",
                "roadwheelangle", "roadwheelsteerangle", "radlenkwinkel", "radeinschlag", "radeinschlagwinkel", "steerwheel");
        means("lateral", "lateral", "quer", "laterale", "laterale", "lateraal", "transversal", "transverse", "trasversale",
                "cornering");
        means("lat", "lat");
        means("lon", "lon", "lng");
        means("long", "long");
        means("longitudinal", "longitudinal", "laengs", "langs", "longitudinale", "inline", "fore", "langs");
        means("vertical", "vertical", "vert", "verticale", "vertikal", "verticaal", "hoch");
        means("acceleration", "acceleration", "accel", "acc", "beschleunigung", "aceleracion", "accelerazione", "acel",
                "accelerometer", "versnelling", "beschl", "g", "gforce", "force", "aceleracao", "accn");
        means("lateral acceleration", "querbeschleunigung", "seitenbeschleunigung", "ay", "accy", "glat", "latg", "gy", "latacc",
                "accelerationy", "accely", "accely", "latac", "acclat", "alat", "aquer", "querbeschl", "gq", "yacc",
                "yaccel", "lateralg", "glateral", "ylat", "gforcelat", "lataccel", "accellat", "gforcey", "gquer", "sideaccel",
                "sideacceleration", "sideacc", "sideg");
        means("longitudinal acceleration", "laengsbeschleunigung", "langsbeschleunigung", "ax", "accx", "glong", "longg",
                "gx", "longacc", "accelx", "acclong", "along", "glon", "gforcelong", "longaccel", "accellong",
                "gforcex", "xaccel", "xacc", "laengsbeschl", "glaengs");
        means("vertical acceleration", "vertikalbeschleunigung", "hochbeschleunigung", "az", "accz", "gvert", "vertg",
                "gz", "accelz", "vertacc", "vertaccel", "zaccel", "gforcez");
        means("yaw", "yaw", "gier", "lacet", "imbardata", "guinada", "guinada", "gieren", "psi");
        means("yaw rate", "yawrate", "gierrate", "drehrate", "giergeschwindigkeit", "gierwinkelgeschwindigkeit", "psidot", "wz",
                "omegaz", "gyroz", "yawvel", "yawr", "yawspeed", "rotz", "zgyro", "rz", "psip", "psipunkt");
        means("rate", "rate", "winkelgeschwindigkeit", "angularvelocity", "dot");
        means("gyro", "gyro", "gyroscope", "gyr", "rotation", "rot", "angular", "omega");
        means("throttle", "throttle", "tps", "gas", "gaspedal", "accelerator", "acelerador", "acceleratore",
                "accelerateur", "farfalla", "papillon", "drosselklappe", "fahrpedal", "throttlepos", "throttleposition",
                "thr", "app", "throttlepedal", "gaspedalstellung", "gashendel", "rthrottle", "gasstellung", "accelpedal",
                "accpedal", "pedalacc", "pedalaccel", "alphafp", "pedalwert", "pwg", "drosselklappenwinkel",
                "drosselklappenstellung", "dkwinkel");
        means("brake", "brake", "bremse", "brems", "frein", "freno", "freio", "rem", "bremspedal", "brakepedal",
                "brakepos", "brk", "brakes", "freinage", "bprs", "bpres", "hbz", "hauptbremszylinder", "brakeline",
                "mastercylinder", "bremspedalkraft", "bremskraft", "brakeforce", "bremspedalweg");
        means("brake pressure", "bremsdruck", "brakepressure", "brakepress", "pbrake");
        means("pressure", "pressure", "press", "druck", "pression", "presion", "pressione", "pressao", "tpms");
        means("latitude", "latitude", "breitengrad", "breite", "latitud", "latitudine", "gpslat", "gpslatitude");
        means("longitude", "longitude", "laengengrad", "langengrad", "longitud", "longitudine", "gpslon", "gpslong",
                "gpslongitude", "laenge");
        means("position", "position", "pos", "coordinate", "coord", "posicion", "posizione", "koordinate", "local",
                "world", "location");
        means("x", "x", "posx", "xpos", "east", "easting", "ost");
        means("y", "y", "posy", "ypos", "north", "northing", "nord");
        means("z", "z");
        means("wheel", "wheel", "rad", "roue", "rueda", "ruota", "wiel", "whl", "roda", "wheels");
        means("wheel speed", "wheelspeed", "raddrehzahl", "radgeschwindigkeit", "ws", "wspd", "wheelspd", "vwheel",
                "whlspd", "radgeschw", "wheelvel", "nwheel", "drehzahlrad", "wheelrpm", "whlspeed", "wss");
        means("damper", "damper", "shock", "suspension", "susp", "daempfer", "dampfer", "federweg", "daempferweg",
                "dampferweg", "amortisseur", "amortiguador", "ammortizzatore", "feder", "strut", "demper",
                "einfederung", "sospensione", "shockpot", "amort");
        means("ride height", "rideheight", "bodenfreiheit", "fahrhoehe", "fahrzeughoehe", "rh", "hoehenstand");
        means("ride", "ride");
        means("height", "height", "hoehe", "hauteur", "altura", "altezza");
        means("tyre", "tyre", "tire", "reifen", "pneu", "neumatico", "pneumatico", "gomma", "tyres", "tires", "tread",
                "laufflaeche", "band", "lauffl", "surface");
        means("tyre pressure", "reifendruck", "tyrepressure", "tirepressure", "tyrepress", "tirepress", "reifeninnendruck",
                "tirepres", "tyrepres", "ptyre", "ptire", "luftdruck");
        means("tyre temperature", "reifentemperatur", "tyretemp", "tiretemp", "reifentemp", "ttyre", "ttire",
                "tyretemperature", "tiretemperature");
        means("temperature", "temperature", "temp", "temperatur", "temperatura", "temps", "tmp", "ir");
        means("inner", "inner", "inside", "innen", "interieur", "interior", "interno", "in", "int");
        means("middle", "middle", "mid", "mitte", "centre", "center", "milieu", "centro", "medio", "mittel", "ctr");
        means("outer", "outer", "outside", "aussen", "exterieur", "exterior", "esterno", "out", "ext");
        means("front", "front", "vorn", "vorne", "avant", "delantero", "delantera", "anteriore", "f", "va", "vorder",
                "vordere", "voor", "frt");
        means("rear", "rear", "hinten", "arriere", "trasero", "trasera", "posteriore", "back", "ha", "hinter", "r",
                "achter");
        means("left", "left", "links", "gauche", "izquierdo", "izquierda", "sinistra", "sinistro", "li", "linke", "l",
                "linker");
        means("right", "right", "rechts", "droite", "droit", "derecho", "derecha", "destra", "destro", "re", "rechte",
                "rechter");
        means("front left", "fl", "lf", "vl", "avg", "frontleft", "leftfront", "vornelinks", "vli");
        means("front right", "fr", "rf", "vr", "avd", "frontright", "rightfront", "vornerechts", "vre");
        means("rear left", "rl", "lr", "hl", "arg", "rearleft", "leftrear", "hintenlinks", "hli", "bl");
        means("rear right", "rr", "hr", "ard", "rearright", "rightrear", "hintenrechts", "hre", "br");
        means("gps", "gps", "gnss");
        means("", "car", "vehicle", "fahrzeug", "fzg", "angle", "winkel", "angulo", "angolo", "number", "nummer", "nr", "no",
                "num", "count", "counter", "index", "id", "zaehler", "current", "aktuell", "of", "de", "du", "des", "the",
                "del", "di", "sensor", "signal", "value", "wert", "channel", "kanal", "chassis", "cg", "body", "imu",
                "measured", "meas", "gemessen", "corrected", "corr", "total", "gesamt", "travel", "pot", "potentiometer",
                "stellung", "pedal", "pedale", "percent", "raw", "at", "der", "des", "session", "run", "n", "a", "date", "datum",
                "displacement", "since", "start", "in", "axis", "achse", "stroke", "hub", "driver", "input", "actual",
                "ist", "vehicule", "veh", "main", "avl", "al", "par", "zurueckgelegt", "zurueckgelegte", "and", "auf",
                "parcourue", "percorsa", "recorrida", "angolare", "angulaire", "compteur");
        means("foreign", "engine", "motor", "oil", "water", "coolant", "fuel", "clutch", "gearbox", "battery", "volt",
                "voltage", "ambient", "air", "track", "target", "reference", "ref", "predicted", "delta", "difference",
                "diff", "error", "status", "flag", "valid", "quality", "accuracy", "best", "last", "previous", "wind",
                "torque", "moment", "drehmoment", "beacon", "sector", "sektor", "split", "turbo", "boost", "lambda",
                "exhaust", "disc", "scheibe", "caliper", "bias", "balance", "assist", "setpoint", "soll", "demand",
                "heading", "pitch", "roll", "slip", "power", "leistung", "drag", "load", "altitude", "satellites",
                "sats", "hdop", "variance", "std", "average", "mean", "max", "min", "switch", "light", "remaining", "gap",
                "warning", "alarm", "map", "mode", "limit", "limiter", "abs", "tc", "esp",
                "radius", "curvature", "kruemmung", "bremstemperatur", "histogram", "wear", "verschleiss", "spare",
                "motordrehzahl", "drehzahl", "rpm", "cooling", "inlet", "ecu", "cpu", "gear", "gang", "marche", "course",
                "kurs", "bearing", "vario", "sideslip", "schwimmwinkel", "drift", "beta", "speedlimit", "fan", "pump",
                "manifold", "regen", "soc", "deploy", "harvest", "rumble", "vibration", "ffb", "hand",
                "handbrake", "handbremse", "toe", "camber", "sturz", "spur", "ideal", "estimated", "optimal");
    }

    /** One way in which a channel is named. */
    private record Name(Kind kind, Set<String> needed, Set<String> refused, int weight) {
    }

    private static final List<Name> NAMES = names();
    /** Letters that tell a word that was cut short. */
    private static final int LEAST_CUT = 5;
    /** Symbols with an index, written apart: {@code a_y}. */
    private static final Set<String> SHORT = Set.of("ax", "ay", "az", "vx", "wz");
    private static final Set<String> PLACES = Set.of("front", "rear", "left", "right");

    private HeadingWords() {
    }

    /**
     * A channel that a heading may mean.
     *
     * @param unit that it states
     * @param certainty the more, the better; comparable within one log
     */
    record Guess(Channel channel, Optional<LoggedUnit> unit, int certainty) {
    }

    private static void means(String plain, String... words) {
        List<String> meaning = plain.isEmpty() ? List.of() : List.of(plain.split(" "));
        for (String word : words) {
            MEANING.putIfAbsent(word, meaning);
        }
    }

    private static List<Name> names() {
        List<Name> names = new ArrayList<>();
        name(names, Kind.TIME, "time", "lap", 10);
        name(names, Kind.LAP, "lap", "time distance", 10);
        name(names, Kind.LAP_TIME, "lap time", "", 10);
        name(names, Kind.TIME, "tempo", "lap wheel", 9);
        name(names, Kind.LAP_TIME, "lap tempo", "", 10);
        // Where both are logged, the one that begins anew with each lap tells the laps as well.
        name(names, Kind.DISTANCE, "lap distance", "wheel steering", 11);
        name(names, Kind.DISTANCE, "distance", "wheel steering", 10);
        name(names, Kind.SPEED, "speed", "wheel yaw gyro steering damper front rear left right lateral vertical brake "
                + "throttle acceleration", 10);
        name(names, Kind.SPEED, "tempo", "lap wheel", 9);
        name(names, Kind.STEERING, "steering", "rate speed acceleration", 10);
        for (String lateral : List.of("lateral", "lat", "y")) {
            name(names, Kind.LATERAL_ACCELERATION, lateral + " acceleration", "latitude yaw gyro wheel rate", 12);
        }
        name(names, Kind.LATERAL_ACCELERATION, "lateral", "position speed yaw gyro wheel rate", 6);
        for (String along : List.of("longitudinal", "long", "lon", "x")) {
            name(names, Kind.LONGITUDINAL_ACCELERATION, along + " acceleration", "longitude yaw gyro wheel rate", 12);
        }
        name(names, Kind.LONGITUDINAL_ACCELERATION, "longitudinal", "position speed yaw gyro wheel rate", 6);
        for (String up : List.of("vertical", "z")) {
            name(names, Kind.VERTICAL_ACCELERATION, up + " acceleration", "yaw gyro wheel rate front rear", 12);
        }
        name(names, Kind.YAW_RATE, "yaw rate", "acceleration", 12);
        name(names, Kind.YAW_RATE, "yaw speed", "acceleration", 12);
        name(names, Kind.YAW_RATE, "yaw gyro", "acceleration", 12);
        name(names, Kind.YAW_RATE, "gyro z", "acceleration", 11);
        name(names, Kind.YAW_RATE, "rate z", "acceleration", 9);
        name(names, Kind.YAW_RATE, "yaw", "acceleration", 6);
        name(names, Kind.YAW_RATE, "gyro", "acceleration x y wheel steering lateral longitudinal vertical", 5);
        name(names, Kind.THROTTLE, "throttle", "brake pressure temperature", 10);
        name(names, Kind.BRAKE, "brake", "temperature throttle speed rate left right", 10);
        name(names, Kind.LATITUDE, "latitude", "acceleration", 11);
        name(names, Kind.LATITUDE, "lat", "acceleration", 8);
        name(names, Kind.LONGITUDE, "longitude", "acceleration", 11);
        name(names, Kind.LONGITUDE, "lon", "acceleration", 8);
        name(names, Kind.LONGITUDE, "long", "acceleration", 7);
        name(names, Kind.POSITION_X, "x", "acceleration gyro rate speed", 8);
        name(names, Kind.POSITION_Y, "y", "acceleration gyro rate speed", 8);
        name(names, Kind.WHEEL_SPEED, "wheel speed", "yaw steering", 12);
        name(names, Kind.WHEEL_SPEED, "wheel rate", "yaw steering", 11);
        name(names, Kind.WHEEL_SPEED, "wheel gyro", "yaw steering", 11);
        name(names, Kind.WHEEL_SPEED, "speed", "yaw steering damper", 8);
        name(names, Kind.DAMPER, "damper", "speed rate acceleration", 10);
        name(names, Kind.RIDE_HEIGHT, "ride height", "", 12);
        name(names, Kind.TREAD_INNER, "tyre temperature inner", "pressure", 14);
        name(names, Kind.TREAD_MIDDLE, "tyre temperature middle", "pressure", 14);
        name(names, Kind.TREAD_OUTER, "tyre temperature outer", "pressure", 14);
        name(names, Kind.TREAD, "tyre temperature", "pressure inner middle outer", 12);
        name(names, Kind.TYRE_PRESSURE, "tyre pressure", "temperature", 12);
        name(names, Kind.TYRE_PRESSURE, "pressure", "temperature brake", 8);
        return List.copyOf(names);
    }

    private static void name(List<Name> names, Kind kind, String needed, String refused, int weight) {
        names.add(new Name(kind, Set.of(needed.split(" ")), refused.isEmpty() ? Set.of() : Set.of(refused.split(" ")),
                weight));
    }

    /**
     * What the heading may mean, best first; nothing where it says nothing or speaks of something else. Its last words
     * may be a unit.
     */
    static List<Guess> guesses(Heading heading) {
        List<String> tokens = tokens(heading.name());
        List<Guess> guesses = new ArrayList<>();
        guesses(tokens, heading.unit()).forEach(guess -> guesses.add(guess.unit.isPresent() || !heading.unit().isEmpty()
                || tokens.size() < 2 ? guess : new Guess(guess.channel, LoggedUnit.find(tokens.get(tokens.size() - 1),
                        guess.channel.kind().scales()).filter(unit -> unit != LoggedUnit.ONE), guess.certainty)));
        for (int taken = 1; heading.unit().isEmpty() && taken <= 3 && taken < tokens.size(); taken++) {
            int rest = tokens.size() - taken;
            guesses(tokens.subList(0, rest), String.join("", tokens.subList(rest, tokens.size()))).stream()
                    .filter(guess -> guess.unit.isPresent()).forEach(guesses::add);
        }
        guesses.sort((one, other) -> other.certainty != one.certainty ? other.certainty - one.certainty
                : Boolean.compare(other.unit.isPresent(), one.unit.isPresent()));
        return guesses;
    }

    private static List<Guess> guesses(List<String> tokens, String unit) {
        Set<String> said = new HashSet<>(words(tokens));
        if (said.contains("foreign")) {
            return List.of();
        }
        List<Guess> guesses = new ArrayList<>();
        for (Name name : NAMES) {
            if (!said.containsAll(name.needed) || name.refused.stream().anyMatch(said::contains)) {
                continue;
            }
            Optional<Place> place = place(said);
            boolean placed = place.isPresent() && (name.kind.ofPlace()
                    || name.kind == Kind.BRAKE && !place.get().id().contains("-"));
            if (name.kind.ofPlace() && !placed) {
                continue;
            }
            long rest = said.stream().filter(word -> !name.needed.contains(word) && !(placed && PLACES.contains(word)))
                    .count();
            int certainty = 10 * name.weight - (int) (20 * rest) - (said.contains("gps") && !gpsOwn(name.kind) ? 5 : 0);
            Optional<LoggedUnit> known = LoggedUnit.find(unit, name.kind.scales());
            boolean elsewhere = !unit.isEmpty() && known.isEmpty()
                    && LoggedUnit.find(unit, EnumSet.allOf(Scale.class)).isPresent();
            if (certainty > 0 && !elsewhere) {
                guesses.add(new Guess(placed ? Channel.of(name.kind, place.get()) : Channel.of(name.kind),
                        unit.isEmpty() ? Optional.empty() : known, certainty));
            }
        }
        return guesses;
    }

    private static boolean gpsOwn(Kind kind) {
        return kind == Kind.LATITUDE || kind == Kind.LONGITUDE || kind == Kind.POSITION_X || kind == Kind.POSITION_Y;
    }

    private static Optional<Place> place(Set<String> said) {
        String axle = said.contains("front") ? "front" : said.contains("rear") ? "rear" : "";
        String side = said.contains("left") ? "-left" : said.contains("right") ? "-right" : "";
        return Word.find(Place.class, axle + side);
    }

    /** The plain words that those tokens of a heading stand for; unknown ones with a question mark before them. */
    private static List<String> words(List<String> tokens) {
        List<String> plain = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            int taken = longest(tokens, i);
            String joined = String.join("", tokens.subList(i, i + taken));
            List<String> meaning = MEANING.get(joined);
            if (meaning == null) {
                meaning = split(joined).or(() -> cutShort(joined)).orElse(List.of("?" + joined));
            }
            plain.addAll(meaning);
            i += taken - 1;
        }
        return plain;
    }

    /** How many tokens from {@code from} on make one known word when they are written together. */
    private static int longest(List<String> tokens, int from) {
        for (int count = Math.min(3, tokens.size() - from); count > 1; count--) {
            String joined = String.join("", tokens.subList(from, from + count));
            if ((joined.length() > 2 || SHORT.contains(joined)) && MEANING.containsKey(joined)) {
                return count;
            }
        }
        return 1;
    }

    /** A word cut short, {@code Querb.} or {@code Geschw.}: what all words that begin so stand for, if that is one thing. */
    private static Optional<List<String>> cutShort(String word) {
        List<List<String>> meanings = word.length() < LEAST_CUT ? List.of() : MEANING.entrySet().stream()
                .filter(entry -> entry.getKey().startsWith(word)).map(Map.Entry::getValue).distinct().toList();
        return meanings.size() == 1 ? Optional.of(meanings.get(0)) : Optional.empty();
    }

    /** A word that is two known ones written together: {@code steeringangle}, {@code raddrehzahlvl}. */
    private static Optional<List<String>> split(String word) {
        for (int cut = word.length() - 1; cut > 1; cut--) {
            List<String> first = MEANING.get(word.substring(0, cut));
            List<String> second = MEANING.get(word.substring(cut));
            if (first != null && second != null && (word.length() - cut > 1 || cut > 3)) {
                List<String> both = new ArrayList<>(first);
                both.addAll(second);
                return Optional.of(both);
            }
        }
        return Optional.empty();
    }

    private static List<String> tokens(String name) {
        String folded = name.replace("%", " percent ").replace("°", " deg ").replace("²", "2").replace("ß", "ss")
                .replace("ä", "ae").replace("ö", "oe").replace("ü", "ue")
                .replace("Ä", "Ae").replace("Ö", "Oe").replace("Ü", "Ue");
        folded = Normalizer.normalize(folded, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        List<String> tokens = new ArrayList<>();
        for (String token : folded.replaceAll("([a-z])([A-Z])", "$1 $2").replaceAll("([A-Z]{2,})([A-Z][a-z])", "$1 $2")
                .replaceAll("([A-Za-z])([0-9])", "$1 $2").split("[^A-Za-z0-9]+")) {
            if (!token.isEmpty()) {
                tokens.add(token.toLowerCase(Locale.ROOT));
            }
        }
        return tokens;
    }
}
