package org.leat.check.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Loads the rules anew, one class of them changed; all else is as it was loaded before. */
final class RulesLoader extends ClassLoader {

    static final String RULES = "org.leat.pack.";

    private final Map<String, byte[]> changed;

    RulesLoader(ClassLoader parent, Map<String, byte[]> changed) {
        super(parent);
        this.changed = Map.copyOf(changed);
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (!name.startsWith(RULES)) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            if (loaded == null) {
                byte[] bytes = Steps.counted(bytes(name));
                loaded = defineClass(name, bytes, 0, bytes.length);
            }
            return loaded;
        }
    }

    private byte[] bytes(String name) throws ClassNotFoundException {
        byte[] instead = changed.get(name);
        return instead == null ? bytes(getParent(), name) : instead;
    }

    static byte[] bytes(ClassLoader loader, String name) throws ClassNotFoundException {
        try (@Nullable InputStream in = loader.getResourceAsStream(name.replace('.', '/') + ".class")) {
            if (in == null) {
                throw new ClassNotFoundException(name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
