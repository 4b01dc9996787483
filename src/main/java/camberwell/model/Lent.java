package camberwell.model;

import camberwell.car.Dimension;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a class of car stands in for where a car's file is short of dimensions.
 *
 * @param by the class: {@code rear-drive road car}
 * @param what the dimensions that it lends, at least one
 */
public record Lent(String by, List<Dimension> what) {

    /** What is lent, by the words of a car's file: {@code cg-height, front-track}. */
    public String list() {
        return what.stream().map(Dimension::id).collect(Collectors.joining(", "));
    }
}
