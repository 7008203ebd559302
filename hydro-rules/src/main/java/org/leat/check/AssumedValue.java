package org.leat.check;

import java.util.List;
import org.apiguardian.api.API;
import org.leat.file.Position;
import org.leat.plant.numbers.Assumption;

/**
 * An assumption of the plant and the verdicts sensitive to it.
 *
 * @param assumption value and range
 * @param position where the field would stand in the file
 * @param turns verdicts that are others at one end of the range, in order
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record AssumedValue(Assumption assumption, Position position, List<Identity> turns) {
    public AssumedValue {
        turns = List.copyOf(turns);
    }

    /** {@return ids of the rules sensitive to it, each once} */
    public List<String> rules() {
        return turns.stream().map(Identity::rule).distinct().toList();
    }

    /**
     * An assumption that a verdict rests on: at one end of its range the verdict is another.
     *
     * @param field path of the field that would settle it
     * @param atLow what comes of judging with the least value
     * @param atHigh what comes of judging with the greatest value
     */
    public record SensitiveVerdict(String field, Kind atLow, Kind atHigh) {}
}
