package camberwell.debrief;
import camberwell.advice.*; import camberwell.run.*; import camberwell.input.*;
import java.nio.file.*; import java.util.*;
import org.junit.jupiter.api.Test;
class TimingTmp {
  @Test void t() throws Exception {
    Paddock p = new Paddock();
    List<Case> cases = new ArrayList<>();
    try (var s = Files.list(Path.of("/work/wt-cases/demo-cases"))) { for (Path f : s.sorted().toList()) if (f.toString().endsWith(".yaml")) try { cases.add(new CaseReader().read(f).run()); } catch (Exception e) { System.out.println(f + " " + e); } }
    List<Double> ms = new ArrayList<>();
    for (int rep = 0; rep < 3; rep++)
    for (Case c : cases) {
      Outcome full = Outcome.of(p.advisor.advise(c));
      StringBuilder b = new StringBuilder(); int n = 0;
      Paddock.Truthful d = new Paddock.Truthful(c);
      try (Debrief x = p.debrief(Paddock.untold(c))) {
        while (true) { long t0 = System.nanoTime(); var q = x.next(); ms.add((System.nanoTime() - t0) / 1e6);
          if (q.isEmpty()) break; n++; Answer an = d.to(q.get().topic());
          b.append(' ').append(q.get().topic().field()).append(q.get().topic().complaint()).append(an instanceof Answer.Unknown ? "?" : "").append(String.format("(%.2f)", q.get().gain()));
          x.answer(q.get().topic(), an); }
        Outcome got = Outcome.of(x.advice());
        if (rep == 2) System.out.println((got.first().equals(full.first()) ? "OK  " : "DIFF") + " " + (got.driving().equals(full.driving())? "ok" : "DRV " + got.driving() + full.driving()) + " " + n + " " + c.title() + " " + got.first() + " vs " + full.first() + "\n      " + b);
      }
      if (rep < 2) ms.clear();
    }
    Collections.sort(ms); System.out.println("p50 " + ms.get(ms.size()/2) + " p95 " + ms.get((int)(ms.size()*.95)) + " max " + ms.get(ms.size()-1));
  }
}
