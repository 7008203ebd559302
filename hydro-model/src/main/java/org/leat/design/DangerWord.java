package org.leat.design;

import org.apiguardian.api.API;

/** The second word that is needed where a finding can hurt someone. */
@API(status = API.Status.STABLE, since = "0.1")
@About("The second word that is needed where a finding can hurt someone")
public enum DangerWord {
    /** the person named knows the danger and answers for it. */
    ACCEPTED
}
