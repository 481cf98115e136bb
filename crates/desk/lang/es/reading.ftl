### reading
