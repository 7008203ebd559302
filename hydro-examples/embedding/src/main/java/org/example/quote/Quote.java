package org.example.quote;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.pack.BuiltInPack;
import org.leat.plant.cases.Running;
import org.leat.report.Wording;

/** Offers a customer three pipes: what each would bring, and what the checker has against it. */
public final class Quote {

    private final Checker checker = Checker.of(List.of(new BuiltInPack()));
    private final Wording wording = new Wording(checker.rulebook());

    /** One pipe on offer. */
    public record Offer(String pipe, double watts, List<String> objections, long notJudged) {}

    /** What one pipe would bring. */
    public Offer offer(double outsideDiameterMm, double standardDimensionRatio) {
        Report report = checker.check(CustomersPlant.on(outsideDiameterMm, standardDimensionRatio));
        Running asBuilt = report.running().get(0);
        List<String> objections = report.worstFirst(Kind.FAIL).stream()
                .filter(finding -> finding.outcome().rule().startsWith("penstock/"))
                .map(this::line)
                .toList();
        String pipe = String.format(Locale.ROOT, "%.0f mm SDR %.0f", outsideDiameterMm, standardDimensionRatio);
        return new Offer(pipe, asBuilt.operatingPoint().batteryPower(), objections, report.count(Kind.OPEN));
    }

    private String line(Finding finding) {
        return finding.outcome().level().word() + ": " + wording.of(finding);
    }

    /** Prints the three offers. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Quote quote = new Quote();
        for (Offer offer : List.of(quote.offer(40, 26), quote.offer(50, 26), quote.offer(63, 17))) {
            out.printf(Locale.ROOT, "%-14s %4.0f W into the battery%n", offer.pipe(), offer.watts());
            offer.objections().forEach(objection -> out.println("    " + objection));
            out.println("    " + offer.notJudged() + " things could not be judged from what is known at the counter");
        }
        out.println();
        out.println(quote.wording.phrase("caution"));
    }
}
