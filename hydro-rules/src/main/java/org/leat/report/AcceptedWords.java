package org.leat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.leat.check.Kind;
import org.leat.check.Level;

/** Kind and level of a result in a log. */
record AcceptedWords(Kind kind, Level level) {

    /** {@return both; null where one is not there} */
    static @Nullable AcceptedWords of(JsonNode result) {
        String word = result.path("kind").asText();
        String worst = result.path("properties").path("severityIfFailed").asText();
        Kind kind = Arrays.stream(Kind.values())
                .filter(k -> k.word().equals(word))
                .findFirst()
                .orElse(null);
        Level level = Arrays.stream(Level.values())
                .filter(l -> l.word().equals(worst))
                .findFirst()
                .orElse(null);
        return kind == null || level == null ? null : new AcceptedWords(kind, level);
    }
}
