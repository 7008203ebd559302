package org.leat.check;

/** A pack's code that did not end in time. It is not asked again: it may be running still. */
final class TookTooLong extends PackFault {

    private static final long serialVersionUID = 1;

    TookTooLong(String said) {
        super(said);
    }
}
