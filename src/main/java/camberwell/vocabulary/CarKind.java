package camberwell.vocabulary;

/** What sort of car it is. */
public enum CarKind implements Word {
    HATCH("hatch"), SALOON("saloon"), COUPE("coupe"), ROADSTER("roadster"), TOURER("tourer"),
    SINGLE_SEATER("single-seater"), PROTOTYPE("prototype"), STOCK_CAR("stock-car");

    private final String id;

    CarKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
