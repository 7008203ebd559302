package org.leat.check;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.jar.JarFile;
import org.apiguardian.api.API;

/**
 * Finds rule packs that others wrote. A pack registers in the usual way of {@link ServiceLoader}: its class name stands
 * in {@code META-INF/services/org.leat.check.RulePack}.
 *
 * <p>What is found here never throws, loops or gives null: where a pack or rule does, that part answers <em>open</em>
 * with the cause. A rule that does not end in time is stopped waiting for, and not asked again. None of this makes
 * foreign code harmless: a jar can do whatever the user who runs it can.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Packs {

    /** How long a pack may take to answer one question, if nothing else is said. */
    public static final Duration TIME_LIMIT = Duration.ofSeconds(10);

    private Packs() {}

    /** {@return the packs that a class loader finds, in its order} */
    public static List<RulePack> found(ClassLoader loader) {
        return found(loader, "", TIME_LIMIT);
    }

    /**
     * {@return the packs in a jar, loaded by a class loader of their own}
     *
     * <p>Such a pack sees the Java platform, what else is in its jar, and of this program the rule API and the model.
     *
     * @throws IOException if the file is no jar that can be read
     * @throws IllegalArgumentException if no pack is registered in it
     */
    public static List<RulePack> inJar(Path jar) throws IOException {
        return inJar(jar, TIME_LIMIT);
    }

    /**
     * {@return the packs in a jar}
     *
     * @param timeLimit how long they may take to answer one question
     * @throws IOException if the file is no jar that can be read
     * @throws IllegalArgumentException if no pack is registered in it
     */
    public static List<RulePack> inJar(Path jar, Duration timeLimit) throws IOException {
        try (JarFile opened = new JarFile(jar.toFile())) {
            if (opened.getEntry("META-INF/services/" + RulePack.class.getName()) == null) {
                throw new IllegalArgumentException(jar + " registers no rule pack");
            }
        }
        URL[] urls = {jar.toUri().toURL()};
        // stays open: a rule loads its classes when it needs them
        ClassLoader loader = new URLClassLoader(urls, new ApiOnly(Packs.class.getClassLoader()));
        List<RulePack> packs = found(loader, String.valueOf(jar.getFileName()), timeLimit);
        if (packs.isEmpty()) {
            throw new IllegalArgumentException(jar + " registers no rule pack");
        }
        return packs;
    }

    /** {@return a pack of which no question takes longer than that, and whose answers are held against its texts} */
    public static RulePack contained(RulePack pack, Duration timeLimit) {
        ClassLoader loader = pack.getClass().getClassLoader();
        return LoadedPack.of(() -> pack, "", new Watch(timeLimit, loader));
    }

    private static List<RulePack> found(ClassLoader loader, String from, Duration timeLimit) {
        Watch watch = new Watch(timeLimit, loader);
        List<RulePack> packs = new ArrayList<>();
        Iterator<ServiceLoader.Provider<RulePack>> providers =
                ServiceLoader.load(RulePack.class, loader).stream().iterator();
        // a wrong line in a registration breaks its step only; the iterator goes on behind it
        for (int broken = 0; broken < 100; ) {
            ServiceLoader.Provider<RulePack> provider;
            try {
                if (!providers.hasNext()) {
                    break;
                }
                provider = providers.next();
            } catch (java.util.ServiceConfigurationError | LinkageError e) {
                broken++;
                String cause = PackFault.cause(e);
                packs.add(LoadedPack.of(
                        () -> {
                            throw new PackFault(cause);
                        },
                        from + " registration " + broken,
                        watch));
                continue;
            }
            String where = from.isEmpty() ? provider.type().getName() : from;
            packs.add(LoadedPack.of(provider, where, watch));
        }
        return List.copyOf(packs);
    }
}
