package camberwell.model;

import camberwell.car.Car;
import camberwell.vocabulary.*;

final class Probe4 {
    public static void main(String[] a) {
        for (Car car : DemoCars.ALL) {
            if (a.length > 3 && !car.name().startsWith(a[3])) continue;
            CarModel model = CarModel.of(car, Surface.DRY).orElseThrow();
            ProvingGround g = new ProvingGround(model);
            Change c = Change.parse(a[0]).orElseThrow();
            var after = model.withInMotion(c, Integer.parseInt(a[1]));
            if (after.isEmpty()) continue;
            double v = Double.parseDouble(a[2]) / 3.6;
            System.out.println(car.name());
            for (Phase p : Phase.values()) {
                var x = g.figures(model, p, v);
                var y = g.figures(after.get(), p, v);
                if (x.isPresent() && y.isPresent()) {
                    System.out.printf("  %-11s", p.id());
                    Figures f = x.get(); Figures h = y.get();
                    for (var rc : Figures.class.getRecordComponents()) {
                        try {
                            Object o = rc.getAccessor().invoke(f), q = rc.getAccessor().invoke(h);
                            if (o instanceof Double d) System.out.printf(" %s %.3f%+.4f", rc.getName(), d, (Double) q - d);
                        } catch (Exception e) { throw new RuntimeException(e); }
                    }
                    System.out.println();
                }
            }
            System.out.printf("  answer %.4f %+.5f%n", g.answer(model, v), g.answer(after.get(), v) - g.answer(model, v));
        }
    }
}
