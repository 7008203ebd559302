package org.leat.design;

import java.util.List;
import java.util.stream.Collectors;
import org.apiguardian.api.API;

/**
 * A record was given something that can never be. Carries every fault of that record, so that a file's reader can show
 * each at its place.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class ImpossibleValueException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    /**
     * One thing that can never be.
     *
     * @param field the record component that is at fault, as it is named in Java
     * @param found what it holds, printed
     * @param expected what it could hold, printed
     */
    public record Fault(String field, String found, String expected) {}

    /** @param faults at least one */
    public ImpossibleValueException(List<Fault> faults) {
        super(faults.stream()
                .map(f -> f.field() + ": found " + f.found() + ", expected " + f.expected())
                .collect(Collectors.joining("; ")));
        this.faults = List.copyOf(faults);
    }

    /** {@return every fault of the record} */
    public List<Fault> faults() {
        return faults;
    }
}
