package org.leat.plant.numbers;

import io.soabase.recordbuilder.core.RecordBuilder;

/** Marks a record that gets {@code with…} methods, one for each component, written by the build. */
@RecordBuilder.Template(
        options =
                @RecordBuilder.Options(
                        enableWither = true,
                        addFunctionalMethodsToWith = false,
                        useImmutableCollections = true,
                        addStaticBuilder = false,
                        builderClassModifiers = {},
                        fileComment = "Written by the build from the record."))
@interface Withers {}
