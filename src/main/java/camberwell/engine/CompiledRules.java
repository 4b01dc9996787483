package camberwell.engine;

import java.util.Map;

/**
 * One rule file as compiled by Drools to its executable model.
 *
 * @param key the hash of all that went into it
 * @param modelClass the class that holds the model
 * @param classes the byte code, by class name
 */
record CompiledRules(String key, String modelClass, Map<String, byte[]> classes) {
}
