/** The command line. */
module org.leat.rules.command {
    requires info.picocli;
    requires io.jenetics.jpx;
    requires java.xml;
    requires org.leat.rules.expressions;
    requires static org.apiguardian.api;
    requires static org.jspecify;

    // options are set by the command line parser
    opens org.leat.cli to
            info.picocli;
}
