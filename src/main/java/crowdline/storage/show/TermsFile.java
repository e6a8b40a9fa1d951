package crowdline.storage.show;

import crowdline.show.Term;
import java.util.List;

/** The words of the trade that come with the program, each explained. */
public final class TermsFile {
    private static final ShippedData DATA = new ShippedData(
            "/crowdline/terms.json",
            "crowdlineTerms",
            "its glossary",
            "the terms of the glossary cannot be read",
            "the terms of the glossary are damaged");

    private TermsFile() {}

    /**
     * The shipped terms.
     *
     * @throws IllegalStateException if the program was put together without sound ones
     */
    public static List<Term> shipped() {
        return read(DATA.text());
    }

    /** @throws IllegalStateException if the text is no sound list of terms, with every fault in the message */
    static List<Term> read(String text) {
        return DATA.read(text, fields -> fields.list("terms", ShowFromTree::term));
    }
}
