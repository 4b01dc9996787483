package camberwell.cli;

import camberwell.input.CaseFile;
import camberwell.input.CaseReader;

/** A case as it is named on the command line: a file, or {@code -} for standard input. */
final class CaseInput {

    private CaseInput() {
    }

    /** Reads the case; it goes by the name that was typed. */
    static CaseFile read(CaseReader reader, Console console, String name) {
        CaseFile file = name.equals("-") ? reader.read("-", console.in(), console.directory())
                : reader.read(console.path(name));
        return new CaseFile(file.run().withSource(name), file.warnings());
    }
}
