package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apiguardian.api.API;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.OnHand;
import org.leat.check.WayOut;
import org.leat.design.Design;
import org.leat.file.DesignEdit;
import org.leat.file.Reading;
import org.leat.quantity.Measured;

/** Ways out as replacements of values in the design file. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class FileChange {

    private FileChange() {}

    /**
     * {@return the replacements that carry a way out into the file; none where it is advice only, takes a value out,
     * changes a value that cannot be replaced in place: one that stands in a parts file or nowhere, or says that a thing
     * is another than it is}
     */
    public static Optional<List<DesignEdit>> of(WayOut way, Reading reading) {
        List<DesignEdit> replacements = new ArrayList<>();
        if (!way.onHand().isEmpty() || statesFact(way, reading)) {
            return Optional.empty();
        }
        for (Edit edit : way.edits()) {
            Object value = edit.value();
            DesignEdit replacement = value == null || (value instanceof Record && !(value instanceof Measured<?>))
                    ? null
                    : DesignEdit.of(reading, edit.path(), value);
            if (replacement == null) {
                return Optional.empty();
            }
            replacements.add(replacement);
        }
        return replacements.isEmpty() ? Optional.empty() : Optional.of(List.copyOf(replacements));
    }

    /**
     * {@return a file's text with edits of any shape carried into it, comments and layout kept; empty where one of them cannot be
     * written there, or the text would not say what the edits say}
     *
     * @param reader reads the text so changed
     */
    public static Optional<String> written(Reading reading, List<Edit> edits, Function<String, Reading> reader) {
        Design design = reading.design();
        if (design == null) {
            return Optional.empty();
        }
        List<DesignEdit> replacements = new ArrayList<>();
        for (Edit edit : edits) {
            Object value = edit.value();
            if (DesignEdits.apply(design, List.of(edit)).equals(design)) {
                continue;
            }
            DesignEdit replacement = value == null ? null : DesignEdit.setting(reading, edit.path(), value);
            if (replacement == null) {
                return Optional.empty();
            }
            replacements.add(replacement);
        }
        String text = DesignEdit.apply(reading.text(), replacements);
        return DesignEdits.apply(design, edits).equals(reader.apply(text).design())
                ? Optional.of(text)
                : Optional.empty();
    }

    /** {@return whether a way out says what a thing is marked, made or measured to be} That is advice to get another. */
    public static boolean statesFact(WayOut way, Reading reading) {
        Design design = reading.design();
        return design != null && way.edits().stream().anyMatch(edit -> OnHand.isFact(edit.path(), design));
    }
}
