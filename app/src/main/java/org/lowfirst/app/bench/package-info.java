/** What people do at a bench, one class per use case; plain Java, no web framework. Start at {@link Benches}. */
@NullMarked
package org.lowfirst.app.bench;

import org.jspecify.annotations.NullMarked;
