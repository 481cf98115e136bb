//! A new asset is a reason to build again (the embedding macro alone would not notice it).

fn main() {
    println!("cargo:rerun-if-changed=assets");
}
