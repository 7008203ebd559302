package org.leat.check;

/** What a pack did wrong, in words for the report. */
class PackFault extends RuntimeException {

    /** Characters that are told of what it says. */
    private static final int LONGEST = 500;

    private static final long serialVersionUID = 1;

    private final boolean thrown;

    PackFault(String said) {
        this(said, false);
    }

    /** @param thrown whether the code threw, as it may where a plant cannot be solved */
    PackFault(String said, boolean thrown) {
        super(said);
        this.thrown = thrown;
    }

    /** {@return whether this is a fault of a pack, whatever the plant} */
    static boolean whateverThePlant(Throwable thrown) {
        return thrown instanceof PackFault fault && !fault.thrown;
    }

    /** {@return what broke and what it said; whatever the throwable itself does} */
    static String cause(Throwable thrown) {
        String type = thrown.getClass().getSimpleName();
        try {
            String said = thrown.getMessage();
            if (said == null) {
                return type;
            }
            String told = said.length() > LONGEST ? said.substring(0, LONGEST) + "…" : said;
            return thrown instanceof PackFault ? told : type + ": " + told;
        } catch (RuntimeException | StackOverflowError | LinkageError e) {
            return type;
        }
    }
}
