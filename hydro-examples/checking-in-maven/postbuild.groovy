// after each call of invoker.properties: the reports are there, also after a check that failed
def failures = { String folder ->
    ['designs.md', 'designs.sarif'].each { assert new File(basedir, "$folder/$it").length() > 0 }
    new groovy.xml.XmlParser().parse(new File(basedir, "$folder/designs.xml")).testsuite.sum { it.'@failures' as int }
}
assert failures('target/leat') == 0
if (new File(basedir, 'target/failed').exists()) {
    assert failures('target/failed') > 0
}
if (new File(basedir, 'target/nothing').exists()) { // the last call
    assert new File(basedir, 'target/failed').exists()
}
