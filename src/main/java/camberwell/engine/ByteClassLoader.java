package camberwell.engine;

import java.util.Map;

/** Classes that exist as bytes only. */
final class ByteClassLoader extends ClassLoader {

    private final Map<String, byte[]> classes;

    ByteClassLoader(Map<String, byte[]> classes) {
        super(ByteClassLoader.class.getClassLoader());
        this.classes = classes;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = classes.get(name);
        if (bytes == null) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, bytes, 0, bytes.length);
    }
}
