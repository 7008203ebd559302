package org.leat.arbitraries;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.Quantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;

/**
 * Values drawn one after the other from a tape of random numbers. jqwik shrinks the tape, towards zero: the least value,
 * the first choice, the part left out.
 */
public final class Draw {

    private static final int STEPS = 1 << 20;

    private final int[] tape;
    private int at;

    private Draw(int[] tape) {
        this.tape = tape;
    }

    /** {@return whatever a function makes of a tape} */
    public static <T> Arbitrary<T> arbitrary(int length, Function<Draw, T> function) {
        return Arbitraries.integers()
                .between(0, STEPS)
                .withDistribution(net.jqwik.api.RandomDistribution.uniform())
                .array(int[].class)
                .ofSize(length)
                .withoutEdgeCases()
                .map(tape -> function.apply(new Draw(tape)));
    }

    /** {@return a tape that is the same for the same seed, for tests that are no properties} */
    public static Draw seeded(long seed, int length) {
        return new Draw(new Random(seed).ints(length, 0, STEPS + 1).toArray());
    }

    /** {@return a number from nought to one} */
    public double share() {
        return at < tape.length ? (double) tape[at++] / STEPS : 0;
    }

    public boolean yes() {
        return share() > 0.5;
    }

    public double between(double least, double greatest) {
        return rounded(least + (greatest - least) * share(), 4);
    }

    /** {@return a number whose logarithm is spread evenly} */
    public double spread(double least, double greatest) {
        return rounded(least * Math.pow(greatest / least, share()), 4);
    }

    public int whole(int least, int greatest) {
        return (int) Math.min(greatest, least + Math.floor(share() * (greatest - least + 1)));
    }

    @SafeVarargs
    public final <T> T of(T... choices) {
        return choices[whole(0, choices.length - 1)];
    }

    public <E extends Enum<E>> E of(Class<E> type) {
        return of(type.getEnumConstants());
    }

    /** {@return a part, or null in half of the cases} */
    public <T> T maybe(Supplier<T> part) {
        return yes() ? part.get() : null;
    }

    public <T> List<T> list(int least, int greatest, Supplier<T> item) {
        int n = whole(least, greatest);
        List<T> list = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            list.add(item.get());
        }
        return list;
    }

    public <Q extends Quantity<Q>> Quantity<Q> quantity(double least, double greatest, String unit, Class<Q> type) {
        return Si.quantity(least > 0 ? spread(least, greatest) : between(least, greatest), unit, type);
    }

    /** {@return a value with a tolerance of up to a tenth, or none} */
    public <Q extends Quantity<Q>> Measured<Q> measured(double value, String unit, Class<Q> type) {
        Quantity<Q> v = Si.quantity(rounded(value, 4), unit, type);
        double tenth = rounded(Math.abs(value) * share() / 10, 2);
        return yes() ? new Measured<>(v, Si.quantity(tenth, unit, type)) : Measured.exactly(v);
    }

    public static double rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits)).doubleValue();
    }
}
