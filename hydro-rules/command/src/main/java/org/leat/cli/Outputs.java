package org.leat.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leat.check.Report;
import org.leat.file.Reading;
import org.leat.report.ReportWriter;

/** Several outputs of one run: the one on standard output, and files, which take their names when they are whole. */
final class Outputs implements ReportWriter, AutoCloseable {

    /** Makes the writer of a format. */
    @FunctionalInterface
    interface Maker {
        ReportWriter make(Format format, Appendable to, boolean person) throws IOException;
    }

    private record Unfinished(Path named, Path written, Writer to) {}

    private final List<ReportWriter> writers = new ArrayList<>();
    private final List<Unfinished> files = new ArrayList<>();

    /**
     * Begins every output.
     *
     * @param also what is to be written in which format
     * @throws CannotWriteException if a file cannot be begun
     */
    static Outputs begin(Format format, PrintWriter out, Map<Path, Format> also, Maker maker) throws IOException {
        Outputs outputs = new Outputs();
        try {
            for (Map.Entry<Path, Format> entry : also.entrySet()) {
                Writer to = outputs.file(entry.getKey());
                outputs.writers.add(maker.make(entry.getValue(), to, false));
            }
            outputs.writers.add(maker.make(format, out, true));
            return outputs;
        } catch (IOException | RuntimeException e) {
            outputs.close();
            throw e;
        }
    }

    private Writer file(Path named) throws CannotWriteException {
        try {
            if (Files.isDirectory(named)) {
                throw new IOException("it is a folder");
            }
            Path folder = named.toAbsolutePath().getParent();
            Path written = Files.createTempFile(folder, ".leat-", ".part");
            BufferedWriter to = Files.newBufferedWriter(written, StandardCharsets.UTF_8);
            files.add(new Unfinished(named, written, to));
            return to;
        } catch (IOException | UnsupportedOperationException e) {
            throw new CannotWriteException(named + " cannot be written: " + CheckCommand.cause(e), e);
        }
    }

    @Override
    public void add(Report report) throws IOException {
        for (ReportWriter writer : writers) {
            writer.add(report);
        }
    }

    @Override
    public void add(Report report, Reading reading) throws IOException {
        for (ReportWriter writer : writers) {
            writer.add(report, reading);
        }
    }

    @Override
    public void broken(String file, String cause) throws IOException {
        for (ReportWriter writer : writers) {
            writer.broken(file, cause);
        }
    }

    @Override
    public void end() throws IOException {
        for (ReportWriter writer : writers) {
            writer.end();
        }
        while (!files.isEmpty()) {
            Unfinished file = files.get(0);
            file.to().close();
            Replacing.file(file.written(), file.named());
            files.remove(0);
        }
    }

    /** Takes away what was not finished. */
    @Override
    public void close() throws IOException {
        for (Unfinished file : files) {
            file.to().close();
            Files.deleteIfExists(file.written());
        }
    }

    /** A file that the call asks for cannot be written. */
    static final class CannotWriteException extends IOException {

        private static final long serialVersionUID = 1;

        CannotWriteException(String message, Throwable cause) {
            super(message, cause);
        }
    }
}
