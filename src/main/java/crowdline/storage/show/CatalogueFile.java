package crowdline.storage.show;

import crowdline.show.catalogue.Catalogue;

/** The figure catalogue that comes with the program. */
public final class CatalogueFile {
    private static final ShippedData DATA = new ShippedData(
            "/crowdline/catalogue.json",
            "crowdlineCatalogue",
            "its figure catalogue",
            "the figure catalogue cannot be read",
            "the figure catalogue is damaged");

    private CatalogueFile() {}

    /**
     * The shipped catalogue.
     *
     * @throws IllegalStateException if the program was put together without a sound one
     */
    public static Catalogue shipped() {
        return read(DATA.text());
    }

    /** @throws IllegalStateException if the text is not a sound catalogue, with every fault in the message */
    static Catalogue read(String text) {
        return new Catalogue(DATA.read(text, fields -> fields.list("figures", ShowFromTree::entry)));
    }
}
