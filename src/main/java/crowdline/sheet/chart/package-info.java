/** A day as a chart: what is drawn as data, and the one place that knows the library that draws it. */
@NullMarked
package crowdline.sheet.chart;

import org.jspecify.annotations.NullMarked;
