package org.leat.check;

/** A pack's code that did not end in time. It is not asked again: it may be running still. */
final class PackTimeout extends PackFault {

    private static final long serialVersionUID = 1;

    PackTimeout(String said) {
        super(said);
    }
}
