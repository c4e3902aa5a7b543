//! Shared by the tests of this package.
