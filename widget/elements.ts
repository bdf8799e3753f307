import './guide/register.ts'
