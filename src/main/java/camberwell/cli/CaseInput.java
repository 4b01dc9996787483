package camberwell.cli;

import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.util.List;
import java.util.Optional;

/** A case as it is named on the command line: a file, or {@code -} for standard input. */
final class CaseInput {

    private CaseInput() {
    }

    /** Refuses standard input that is named twice: the second time there is nothing left in it. */
    static void once(List<String> cases) {
        if (cases.size() > 1 && cases.indexOf("-") != cases.lastIndexOf("-")) {
            throw new ProblemsException(Problem.of("-", "standard input is one case; name it once", Optional.empty()));
        }
    }

    /** Reads the case; it goes by the name that was typed. */
    static CaseFile read(CaseReader reader, Console console, String name) {
        CaseFile file = name.equals("-") ? reader.read("-", console.in(), console.directory())
                : reader.read(console.path(name));
        return new CaseFile(file.run().withSource(name), file.warnings());
    }
}
