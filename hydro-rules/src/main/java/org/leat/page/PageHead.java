package org.leat.page;

import org.leat.check.Paths;
import org.leat.choice.Overview;
import org.leat.choice.SafetyVerdict;
import org.leat.report.OverviewWords;
import org.leat.report.Wording;

/** What stands first: whether it is safe to open, what it gives, how it was understood, what to do, what to tell. */
final class PageHead {

    private final OverviewWords words;
    private final SafetyVerdict.Answer answer;

    PageHead(Overview overview, Wording wording) {
        this.words = new OverviewWords(overview, wording);
        this.answer = overview.verdict().answer();
    }

    void write(Markup page, String counts) {
        page.open("section", "class", "head", "aria-labelledby", "verdict-title");
        page.leaf("h2", "Safe to open?", "id", "verdict-title");
        page.leaf("p", words.verdict(), "class", "verdict is-" + state());
        page.leaf("p", counts, "class", "counts");
        page.open("dl");
        said(page, "It gives", words.gives());
        said(page, "Understood", words.understood());
        page.close();
        page.open("div", "class", "columns");
        first(page);
        next(page);
        page.close();
        page.close();
    }

    private String state() {
        return switch (answer) {
            case UNREADABLE, UNSAFE -> "error";
            case UNSOLVED, WARNED, UNJUDGED -> "warning";
            case LOOK, JUDGED -> "none";
        };
    }

    private static void said(Markup page, String what, String text) {
        if (!text.isEmpty()) {
            page.leaf("dt", what).leaf("dd", text);
        }
    }

    private void first(Markup page) {
        if (words.first().isEmpty()) {
            return;
        }
        page.open("div").leaf("h3", "Do these first").open("ol", "class", "steps");
        for (OverviewWords.ToDo step : words.first()) {
            page.open("li").leaf("span", step.what(), "class", "lead-in");
            if (!step.gain().isEmpty()) {
                page.text(" ").leaf("span", "(" + step.gain() + ")", "class", ShownText.gainClass(step.gain()));
            }
            page.leaf("p", step.effect(), "class", "where");
            page.close();
        }
        page.close();
        if (!words.together().isEmpty()) {
            page.leaf("p", words.together(), "class", "together");
        }
        page.close();
    }

    private void next(Markup page) {
        if (words.next().isEmpty()) {
            return;
        }
        page.open("div").leaf("h3", "Tell or measure these next").open("ol", "class", "steps");
        for (OverviewWords.ToTell input : words.next()) {
            page.open("li").leaf("code", Paths.shown(input.field())).text(": " + input.how());
            page.leaf("p", "settles " + input.settles(), "class", "where");
            page.close();
        }
        page.close();
        int more = words.inputs() - words.next().size();
        if (more > 0) {
            page.leaf("p", more + " more below, under \u201cNot judged\u201d.", "class", "where");
        }
        page.close();
    }
}
