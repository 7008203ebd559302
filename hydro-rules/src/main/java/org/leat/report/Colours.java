package org.leat.report;

import org.apiguardian.api.API;
import org.leat.check.Level;

/** Colours of a terminal, or none. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum Colours {
    /** plain text. */
    NONE,
    /** escape sequences of ECMA-48. */
    TERMINAL;

    String level(Level level, String text) {
        return paint(
                switch (level) {
                    case ERROR -> "1;31";
                    case WARNING -> "33";
                    case NOTE -> "36";
                },
                text);
    }

    String heading(String text) {
        return paint("1", text);
    }

    private String paint(String code, String text) {
        return this == NONE ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
    }
}
