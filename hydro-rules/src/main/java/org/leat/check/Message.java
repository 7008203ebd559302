package org.leat.check;

import java.util.List;
import org.apiguardian.api.API;

/**
 * What there is to say, before any wording: writers turn it into text.
 *
 * @param id which text, within the rule (or of the checker itself, see {@link CommonMessages})
 * @param args what fills the text
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Message(String id, List<Arg> args) {

    public Message {
        args = List.copyOf(args);
    }

    /** {@return a message} */
    public static Message of(String id, Arg... args) {
        return new Message(id, List.of(args));
    }
}
