package org.leat.design;

/** The second word that is needed where a finding can hurt someone. */
@About("The second word that is needed where a finding can hurt someone")
public enum DangerWord {
    /** the person named knows the danger and answers for it. */
    ACCEPTED
}
