package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** When a changed design is worse than it was. */
class FailuresTest {

    private static Outcome fail(String rule, String path, String during, Level level) {
        return new Outcome.Fail(new Identity(rule, path, during), level, null, Message.of(rule + ".no"));
    }

    private static Failures of(Outcome... outcomes) {
        return Failures.of(List.of(outcomes));
    }

    private static final Outcome ONE = fail("made/one", "/site", "", Level.WARNING);

    @Test
    void nothing_is_worse_than_itself_and_fewer_failures_are_not_worse() {
        assertThat(of(ONE).worseThan(of(ONE), Level.NOTE)).isEmpty();
        assertThat(of().worseThan(of(ONE), Level.NOTE)).isEmpty();
        assertThat(of().worseThan(of(), Level.NOTE)).isEmpty();
    }

    @Test
    void a_failure_counts_up_to_its_own_level_and_not_beyond() {
        assertThat(of(ONE).worseThan(of(), Level.NOTE)).contains("made/one");
        assertThat(of(ONE).worseThan(of(), Level.WARNING)).contains("made/one");
        assertThat(of(ONE).worseThan(of(), Level.ERROR)).isEmpty();
    }

    @Test
    void one_that_was_milder_is_worse_and_one_that_was_harsher_is_not() {
        Outcome harsher = fail("made/one", "/site", "", Level.ERROR);
        assertThat(of(harsher).worseThan(of(ONE), Level.ERROR)).contains("made/one");
        assertThat(of(harsher).worseThan(of(ONE), Level.NOTE)).contains("made/one");
        assertThat(of(ONE).worseThan(of(harsher), Level.NOTE)).isEmpty();
    }

    @Test
    void cases_are_counted_and_not_named() {
        Outcome wide = fail("made/one", "/site", "running/11 mm", Level.WARNING);
        Outcome narrow = fail("made/one", "/site", "running/10 mm", Level.WARNING);
        assertThat(of(narrow).worseThan(of(wide), Level.WARNING)).isEmpty();
        assertThat(of(narrow, wide).worseThan(of(wide), Level.WARNING)).contains("made/one");
    }

    @Test
    void another_element_of_the_same_rule_is_worse() {
        assertThat(of(fail("made/one", "/loads", "", Level.WARNING)).worseThan(of(ONE), Level.WARNING))
                .contains("made/one");
    }

    @Test
    void the_first_that_is_worse_is_told() {
        Outcome two = fail("made/two", "/site", "", Level.WARNING);
        Outcome three = fail("made/three", "/site", "", Level.WARNING);
        assertThat(of(ONE, three, two).worseThan(of(ONE), Level.WARNING)).contains("made/three");
        assertThat(of(ONE, two, three).worseThan(of(ONE), Level.WARNING)).contains("made/two");
    }

    @Test
    void only_what_fails_counts() {
        Identity identity = new Identity("made/one", "/site", "");
        Message message = Message.of("made/one.no");
        Stream<Outcome> others = Stream.of(
                new Outcome.Pass(identity, Level.ERROR, null, message),
                new Outcome.Open(identity, Level.ERROR, null, message, "/site/altitude"),
                new Outcome.Review(identity, Level.ERROR, message),
                new Outcome.NotApplicable(identity, Level.ERROR, message),
                new Outcome.Told(identity, Level.ERROR, message));
        assertThat(Failures.of(others.toList()).worseThan(of(), Level.NOTE)).isEmpty();
    }
}
