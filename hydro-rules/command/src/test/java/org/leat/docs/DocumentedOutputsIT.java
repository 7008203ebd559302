package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.cli.RealJar;

/**
 * Every console output in the docs is what the real jar prints. A document marks one with {@code <!-- output of: leat …
 * -->}, {@code <!-- last line of: leat … -->} or {@code <!-- first 9 lines of: leat … -->} before a fenced block; with {@code -Dleat.write-docs=true} the blocks are written again.
 */
class DocumentedOutputsIT {

    private static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();
    private static final Pattern BLOCK = Pattern.compile(
            "(<!-- (output|last line|first \\d+ lines) of: leat ([^\\n]*?) -->\\n(`{3,})[a-z]*\\n)(.*?)(\\n?\\4\\n)",
            Pattern.DOTALL);

    static Stream<Path> documents() throws IOException {
        List<Path> found = new ArrayList<>();
        found.add(ROOT.resolve("README.md"));
        try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            docs.filter(p -> p.toString().endsWith(".md")).sorted().forEach(found::add);
        }
        return found.stream();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void outputs_in_the_docs_are_what_the_program_prints(Path document) throws Exception {
        String text = Files.readString(document);
        StringBuilder now = new StringBuilder();
        Matcher m = BLOCK.matcher(text);
        while (m.find()) {
            String printed = run(m.group(3)).stripTrailing() + "\n";
            if (m.group(2).equals("last line")) {
                List<String> lines = printed.lines().toList();
                printed = String.join("\n", lines.subList(Math.max(0, lines.size() - 1), lines.size())) + "\n";
            }
            if (m.group(2).startsWith("first ")) {
                int lines = Integer.parseInt(m.group(2).split(" ")[1]);
                printed = printed.lines().limit(lines).collect(Collectors.joining("\n")) + "\n";
            }
            m.appendReplacement(now, Matcher.quoteReplacement(m.group(1) + printed + m.group(4) + "\n"));
        }
        m.appendTail(now);
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(document, now);
        }
        assertThat(Files.readString(document)).isEqualTo(now.toString());
    }

    private static String run(String arguments) throws Exception {
        ProcessBuilder builder =
                new ProcessBuilder(RealJar.command(List.of(), arguments.strip().split(" +")));
        builder.directory(ROOT.toFile());
        builder.redirectErrorStream(true);
        Process process = builder.start();
        process.getOutputStream().close();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return printed;
    }
}
