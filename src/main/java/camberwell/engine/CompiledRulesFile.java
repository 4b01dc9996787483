package camberwell.engine;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The bytes of compiled rules in the cache: a digest, then what it is the digest of. */
final class CompiledRulesFile {

    private static final int DIGEST_BYTES = 32;
    private static final int MOST_CLASSES = 20_000;
    private static final int MOST_BYTES = 4 << 20;

    private CompiledRulesFile() {
    }

    static byte[] write(CompiledRules compiled) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            DataOutputStream out = new DataOutputStream(bytes);
            out.writeUTF(compiled.key());
            out.writeUTF(compiled.modelClass());
            out.writeInt(compiled.classes().size());
            for (Map.Entry<String, byte[]> entry : compiled.classes().entrySet()) {
                out.writeUTF(entry.getKey());
                out.writeInt(entry.getValue().length);
                out.write(entry.getValue());
            }
            byte[] body = bytes.toByteArray();
            byte[] whole = Arrays.copyOf(digest(body, 0), DIGEST_BYTES + body.length);
            System.arraycopy(body, 0, whole, DIGEST_BYTES, body.length);
            return whole;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What was written for {@code key}; empty when the bytes are damaged or are something else. */
    static Optional<CompiledRules> read(String key, byte[] whole) {
        if (whole.length <= DIGEST_BYTES
                || !Arrays.equals(digest(whole, DIGEST_BYTES), Arrays.copyOf(whole, DIGEST_BYTES))) {
            return Optional.empty();
        }
        try (DataInputStream in = new DataInputStream(
                new ByteArrayInputStream(whole, DIGEST_BYTES, whole.length - DIGEST_BYTES))) {
            if (!in.readUTF().equals(key)) {
                return Optional.empty();
            }
            String model = in.readUTF();
            int count = in.readInt();
            if (count < 1 || count > MOST_CLASSES) {
                return Optional.empty();
            }
            Map<String, byte[]> classes = new LinkedHashMap<>();
            for (int i = 0; i < count; i++) {
                String name = in.readUTF();
                int length = in.readInt();
                if (length < 0 || length > MOST_BYTES) {
                    return Optional.empty();
                }
                classes.put(name, in.readNBytes(length));
            }
            return Optional.of(new CompiledRules(key, model, classes));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static byte[] digest(byte[] bytes, int from) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(bytes, from, bytes.length - from);
            return digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
