package org.example.catchment;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.leat.plant.Plant;

/** Screens the places of a catchment, each with every set of parts, on as many machines as the engine has; the result is Parquet. */
public final class Catchment {

    private static final StructType SHAPE = new StructType()
            .add("place", DataTypes.LongType, false)
            .add("parts", DataTypes.IntegerType, false)
            .add("head", DataTypes.DoubleType, false)
            .add("flow", DataTypes.DoubleType, false)
            .add("fullPipe", DataTypes.BooleanType, false)
            .add("hold", DataTypes.StringType, false)
            .add("speedRatio", DataTypes.DoubleType, false)
            .add("watts", DataTypes.DoubleType, false);

    private Catchment() {}

    /** {@return the engine in this process alone, nothing listening but on the loopback} */
    static SparkSession local() {
        return SparkSession.builder()
                .appName("catchment")
                .master("local[2]")
                .config("spark.ui.enabled", "false")
                .config("spark.driver.bindAddress", "127.0.0.1")
                .config("spark.driver.host", "127.0.0.1")
                .config("spark.sql.shuffle.partitions", "2")
                .getOrCreate();
    }

    /** Screens places, numbered from nought, and writes the result into a folder. */
    static void screen(SparkSession spark, long places, String folder) {
        Dataset<Row> screened = spark.range(0, places, 1, 8)
                .mapPartitions((MapPartitionsFunction<Long, Row>) Catchment::rows, Encoders.row(SHAPE));
        screened.write().mode(SaveMode.Overwrite).parquet(folder);
    }

    private static Iterator<Row> rows(Iterator<Long> numbers) {
        Plant kind = Screened.kind();
        List<Row> rows = new ArrayList<>();
        while (numbers.hasNext()) {
            for (Screened one : Screened.all(kind, CandidateSite.of(numbers.next()))) {
                rows.add(RowFactory.create(
                        one.place(),
                        one.parts(),
                        one.head(),
                        one.flow(),
                        one.fullPipe(),
                        one.hold(),
                        one.speedRatio(),
                        one.watts()));
            }
        }
        return rows.iterator();
    }

    /** Screens so many places and tells the best set of parts of the best five. */
    public static void main(String[] arguments) {
        long places = arguments.length > 0 ? Long.parseLong(arguments[0]) : 1000;
        String folder = arguments.length > 1 ? arguments[1] : "target/screened";
        SparkSession spark = local();
        spark.sparkContext().setLogLevel("WARN");
        try {
            screen(spark, places, folder);
            Dataset<Row> read = spark.read().parquet(folder);
            System.out.println(read.count() + " plants screened");
            read.where("hold = 'HELD' and fullPipe")
                    .groupBy("place")
                    .agg(
                            org.apache
                                    .spark
                                    .sql
                                    .functions
                                    .max_by(functions.col("parts"), functions.col("watts"))
                                    .alias("parts"),
                            functions.max("watts").alias("watts"))
                    .orderBy(functions.col("watts").desc())
                    .limit(5)
                    .collectAsList()
                    .forEach(row -> System.out.println("place " + row.getLong(0) + ": set " + row.getInt(1) + ", "
                            + Math.round(row.getDouble(2)) + " W"));
        } finally {
            spark.stop();
        }
    }
}
