/**
 * Words: codes, values and quantities become sentences here, by language and units. The one home of numbers, dates,
 * units and chances for pages, prints and commands.
 *
 * <p>In: {@link org.earleaf.units.Said}, {@link org.earleaf.units.Problem}, {@link org.earleaf.units.Measured}. Out:
 * text, or safe HTML. Start at {@link org.earleaf.app.words.Words}. The texts stand in {@code words/en-US.properties},
 * in ICU's message format.
 */
package org.earleaf.app.words;
