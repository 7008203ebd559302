package org.leat.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.choice.Proposals.Cause;
import org.leat.choice.Proposals.Proposal;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Filled;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.leat.file.RecordReader;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.plant.Screening;
import org.leat.season.DesignYear;

/** Plants proposed for places that have none. */
class ProposalsTest {

    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));
    private static final Proposals PROPOSALS = Proposals.judgedBy(CHECKER);

    private static SiteSurvey survey(String text) {
        Filled<SiteSurvey> read = RecordReader.read(SiteSurvey.class, text, "survey.yaml");
        assertThat(read.problems()).isEmpty();
        return Objects.requireNonNull(read.record());
    }

    private static SiteSurvey place(double head, double litres) {
        return survey(String.format(Locale.ROOT, """
                format: 1
                name: place
                site:
                  gross-head: %s m
                  stream: { flow: %s L/s }
                pipe-length: %s m
                loads:
                  - { name: lights, power: 9 W, count: 4, hours-per-day: 5 }
                  - { name: refrigerator, power: 60 W, hours-per-day: 9, surge-factor: 5 }
                """, head, litres, 4 * head));
    }

    /** What the rules say of the text of the file, read again. */
    private static List<String> errors(Proposal proposal, boolean whole) {
        Reading reading = DesignReader.read(proposal.text(), "proposal.yaml");
        assertThat(reading.problems()).isEmpty();
        Design design = Objects.requireNonNull(reading.design());
        assertThat(design).isEqualTo(proposal.design());
        Stream<Outcome> outcomes = whole
                ? CHECKER.check(reading).findings().stream().map(finding -> finding.outcome())
                : CHECKER.outcomes(design).stream();
        return outcomes.filter(outcome -> outcome instanceof Outcome.Fail && outcome.level() == Level.ERROR)
                .map(Outcome::rule)
                .toList();
    }

    /** Where the largest machine of the list begins to limit, W: what fits it best comes in steps. */
    private static final double LARGEST_MACHINE = 2500;

    /** More of either never gives less, on a grid whose steps are wider than those of the parts. */
    @Test
    void more_fall_or_more_water_never_gives_less_and_no_proposal_has_an_error() {
        boolean every = Boolean.getBoolean("leat.every-place");
        double[] heads = every ? new double[] {5, 8, 13, 21, 34, 55, 89, 144} : new double[] {13, 34};
        double[] flows = every ? new double[] {0.7, 1.2, 2, 3.5, 6, 10, 17} : new double[] {2, 6};
        double[] before = new double[flows.length];
        int found = 0;
        for (double head : heads) {
            double left = 0;
            for (int i = 0; i < flows.length; i++) {
                Optional<Proposal> proposal = PROPOSALS.most(place(head, flows[i]));
                String at = head + " m, " + flows[i] + " L/s";
                double mean = proposal.map(Proposal::meanPower).orElse(0.0);
                double limited = Math.min(mean, LARGEST_MACHINE);
                if (proposal.isPresent()) {
                    assertThat(errors(proposal.get(), every)).as(at).isEmpty();
                    assertThat(Screening.near(Plant.of(proposal.get().design()))
                                    .meanPower(proposal.get().design()))
                            .hasValue(mean);
                    assertThat(proposal.get().design().site())
                            .isEqualTo(place(head, flows[i]).site());
                    assertThat(proposal.get().year()).isInstanceOf(DesignYear.Told.class);
                    found++;
                }
                assertThat(limited).as(at).isGreaterThanOrEqualTo(left).isGreaterThanOrEqualTo(before[i]);
                if (every) {
                    System.err.println(at + ": " + Math.round(mean) + " W");
                }
                left = limited;
                before[i] = limited;
            }
        }
        assertThat(found).isGreaterThanOrEqualTo(heads.length * flows.length - (every ? 10 : 0));
    }

    /** The survey that the docs print, word for word, and a stream that never changes. */
    @Test
    void one_constant_flow_is_enough_and_the_numbers_of_what_is_proposed_do_not_contradict_one_another()
            throws IOException {
        String docs = Files.readString(Path.of("..", "docs", "proposing.md"));
        String printed = docs.substring(docs.indexOf("```yaml\n") + 8);
        assertThat(PROPOSALS.most(survey(printed.substring(0, printed.indexOf("```")))))
                .isPresent();
        Proposals.Found found = (Proposals.Found) PROPOSALS.of(place(25, 4));
        assertThat(found.best())
                .hasSizeGreaterThan(1)
                .allSatisfy(proposal -> assertThat(CHECKER.outcomes(proposal.design()))
                        .filteredOn(Outcome.Fail.class::isInstance)
                        .extracting(Outcome::rule)
                        .doesNotContain("plausibility/element-label", "dump/branch-protection"));
    }

    @Test
    void three_metres_and_a_litre_a_second_are_the_wrong_place_and_both_reasons_are_told() {
        Proposals.Wrong wrong = (Proposals.Wrong) PROPOSALS.of(place(3, 1));
        assertThat(wrong.reasons().stream().map(Proposals.Reason::cause))
                .containsExactly(Cause.LOW_HEAD, Cause.TOO_LITTLE);
        // 0.53 of 1000 kg/m3 times 9.80665 m/s2 times 3 m times 0.001 m3/s
        assertThat(wrong.reasons().get(1).value()).isEqualTo(0.53 * 1000 * 9.80665 * 3 * 0.001);
    }

    @Test
    void a_dry_bed_a_steep_face_and_a_village_are_the_wrong_places() {
        assertThat(causes("gross-head: 20 m", "{ flow: 2 L/s, kept-in-stream: 2 L/s }", "60 m", "9 W"))
                .containsExactly(Cause.DRY);
        assertThat(causes("gross-head: 300 m", "{ flow: 2 L/s }", "900 m", "9 W"))
                .containsExactly(Cause.HIGH_HEAD);
        assertThat(causes("gross-head: 60 m", "{ flow: 30 L/s }", "200 m", "9 kW"))
                .containsExactly(Cause.TOO_MUCH_WANTED);
        assertThat(causes("gross-head: { kind: tube, steps: [ 10 m, 10 m ] }", "{ flow: 5 L/s }", "15 m", "9 W"))
                .containsExactly(Cause.PIPE_SHORTER);
    }

    private static List<Cause> causes(String head, String stream, String pipe, String load) {
        Proposals.Answer answer = PROPOSALS.of(
                survey("format: 1\nname: place\nsite:\n  " + head + "\n  stream: " + stream + "\npipe-length: " + pipe
                        + "\nloads: [ { name: all, power: " + load + ", hours-per-day: 24 } ]\n"));
        return ((Proposals.Wrong) answer)
                .reasons().stream().map(Proposals.Reason::cause).toList();
    }

    @Test
    void a_survey_that_cannot_be_is_told_with_its_places() {
        Filled<SiteSurvey> read = RecordReader.read(SiteSurvey.class, """
                format: 1
                name: place
                site: { gross-head: 20 m }
                pipe-length: 12 m
                penstock: 3
                loads: [ { name: lights, power: 9 W } ]
                """, "survey.yaml");
        assertThat(read.record()).isNull();
        assertThat(read.problems().stream().map(ProblemText::line))
                .anySatisfy(
                        line -> assertThat(line).startsWith("survey.yaml:5:1").contains("penstock"));
        Filled<SiteSurvey> other = RecordReader.read(SiteSurvey.class, """
                format: 1
                name: place
                site: { gross-head: 20 m }
                pipe-length: 12 m
                loads: [ { name: lights, power: 9 W } ]
                """, "survey.yaml");
        assertThat(other.problems().stream().map(ProblemText::line))
                .anySatisfy(
                        line -> assertThat(line).startsWith("survey.yaml:3:").contains("no stream"))
                .anySatisfy(
                        line -> assertThat(line).startsWith("survey.yaml:4:").contains("no less than the fall"))
                .anySatisfy(
                        line -> assertThat(line).startsWith("survey.yaml:5:").contains("hours-per-day"));
    }
}
