// SPDX-License-Identifier: Apache-2.0
/**
 * Photographs as people send them: read whole or refused, stripped of what they tell beside the picture, and made small.
 *
 * <pre>
 * In         the bytes of a JPEG or PNG
 * Out        Photograph, and a thumb of it
 * Not here   what a picture shows: core; where it is kept: store
 * </pre>
 */
@NullMarked
package org.earleaf.app.picture;

import org.jspecify.annotations.NullMarked;
