package org.leat.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.CharBuffer;

/** A writer that hands characters on and leaves what it writes to open. */
final class Characters extends Writer {

    private final Appendable out;

    Characters(Appendable out) {
        this.out = out;
    }

    @Override
    public void write(char[] chars, int offset, int length) throws IOException {
        out.append(CharBuffer.wrap(chars, offset, length));
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
}
