package org.leat.cli;

/** What a report is written in. */
enum Format {
    TEXT,
    JSON,
    SARIF,
    JUNIT,
    MARKDOWN,
    HTML
}
