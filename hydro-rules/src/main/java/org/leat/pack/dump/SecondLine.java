package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;

import org.leat.check.Rule;
import org.leat.pack.kit.LeadAcid;
import org.leat.pack.kit.SecondGuards;

/** An independent second means against overvoltage. */
final class SecondLine {

    static final Rule RULE = Rule.of("dump/second-line", WARNING, "an independent second means against overvoltage")
            .canFailAs(ERROR)
            .warningsHurt()
            .why(
                    "One relay, one element, one setting stand between a full battery and the whole stream. Everything that"
                            + " guards alone fails alone; with lithium the failure is a fire.")
            .formula("a second means stated; an error where the battery is of lithium")
            .judged("as built")
            .source(
                    "US NEC 690.72(B) in issues to 2014, since then article 706: a second, independent means against overcharge with diverted charge (from memory)")
            .passes("stated", "A second means against overvoltage is stated.")
            .fails("alone", "Nothing stands behind the one that limits the voltage.")
            .judge(j -> j.at(SecondGuards.STATED)
                    .as(LeadAcid.is(j) ? WARNING : ERROR)
                    .isSo(SecondGuards.stated(j)))
            .wayOut(
                    "fit",
                    "A second, independent means: a deflector that drops in, or a second dump load with its own trigger, or a"
                            + " clamp.",
                    SecondGuards::deflector)
            .build();

    private SecondLine() {}
}
