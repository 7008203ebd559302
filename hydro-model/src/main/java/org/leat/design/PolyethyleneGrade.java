package org.leat.design;

import org.apiguardian.api.API;

/** Grades of polyethylene by minimum required strength. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Grades of polyethylene by minimum required strength")
public enum PolyethyleneGrade {
    /** 8 MPa. */
    @AlsoWritten("PE 80")
    PE80,
    /** 10 MPa. */
    @AlsoWritten("PE 100")
    PE100
}
