/** The register of a valley's plants. */
module org.example.register {
    requires org.leat.rules;
    requires org.leat.rules.expressions;

    exports org.example.register;
}
