package org.leat.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What the program said to a call, and how it ended. */
record Said(int code, String out, String err) {

    static Said leat(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Leat.run(args, new PrintWriter(out), new PrintWriter(err));
        return new Said(code, out.toString(), err.toString());
    }
}
