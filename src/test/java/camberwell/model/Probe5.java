package camberwell.model;
import camberwell.input.CaseReader;
import camberwell.vocabulary.*;
import camberwell.physics.*;
import java.nio.file.*;
final class Probe5 { public static void main(String[] a) throws Exception {
  for (String folder : new String[]{"demo-cases/cars","rules/reference-cars"}) for (Path p : (Iterable<Path>) Files.list(Path.of(folder)).sorted()::iterator) {
    CarModel m = CarModel.of(new CaseReader().readCar(p), Surface.DRY).orElseThrow();
    System.out.printf("%-28s", m.car().name());
    Bench b = new Bench(m);
    for (CornerPhase ph : CornerPhase.values()) for (double v : new double[]{60,170}) System.out.printf(" %s%.0f %.3f", ph.name().substring(0,3), v, b.behaviour(ph, v/3.6).map(Behaviour::limitBalance).orElse(Double.NaN));
    System.out.println();
  }
}}
