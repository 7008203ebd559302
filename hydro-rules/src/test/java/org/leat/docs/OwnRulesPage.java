package org.leat.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The rule in Java that the docs print, for the tests that compile and run it. */
public final class OwnRulesPage {

    private OwnRulesPage() {}

    /** {@return the worked example of the docs} */
    public static String source() throws IOException {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.exists(folder.resolve("docs/own-rules.md"))) {
            folder = folder.getParent();
        }
        Matcher m = Pattern.compile("```java\n(package example;.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(folder.resolve("docs/own-rules.md")));
        if (!m.find()) {
            throw new AssertionError("the page holds no class");
        }
        return m.group(1);
    }
}
