package org.leat.design;

/** Grades of polyethylene by minimum required strength. */
@About("Grades of polyethylene by minimum required strength")
public enum PolyethyleneGrade {
    /** 8 MPa. */
    PE80,
    /** 10 MPa. */
    PE100
}
