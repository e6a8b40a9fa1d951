package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.bounds.Quantity;
import crowdline.show.catalogue.Catalogue;
import java.time.Year;
import java.util.function.Consumer;

/** Asks about numbers that look like a slip of the hand, each by itself. */
final class PlausibleRule implements ShowRule {
    private static final int FIRST_YEAR = 1990;
    private static final int LAST_YEAR = 2100;

    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        int year = show.date().getYear();
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "implausible",
                    "the date is in the year " + Year.of(year) + "; check it",
                    "date"));
        }
        ShowNumbers.visit(show, (quantity, value, path) -> {
            if (!quantity.isPlausible(value)) {
                findings.accept(new Finding(Severity.WARNING, "implausible", sentence(quantity, value), path));
            }
        });
    }

    private static String sentence(Quantity quantity, double value) {
        String slip = Slip.hint(quantity, value, quantity::isPlausible);
        return "the " + quantity.key() + " is " + Quantity.written(value) + "; " + quantity.plausible()
                + " is plausible (" + quantity.why() + ")" + (slip.isEmpty() ? "; check it" : slip);
    }
}
