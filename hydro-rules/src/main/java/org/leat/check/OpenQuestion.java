package org.leat.check;

/** Ends a rule's judging of one element where an input is not there; the rule itself never sees it. */
final class OpenQuestion extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Outcome.Open answer;

    OpenQuestion(Outcome.Open answer) {
        super(answer.rule() + " is open at " + answer.path(), null, false, false);
        this.answer = answer;
    }

    Outcome.Open answer() {
        return answer;
    }
}
