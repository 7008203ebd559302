package org.leat.design;

/** Grades of polyethylene by minimum required strength. */
@About("Grades of polyethylene by minimum required strength")
public enum PolyethyleneGrade {
    /** 8 MPa. */
    @AlsoWritten("PE 80")
    PE80,
    /** 10 MPa. */
    @AlsoWritten("PE 100")
    PE100
}
